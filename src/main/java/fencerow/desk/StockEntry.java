package fencerow.desk;

import java.time.Instant;

/**
 * One unit in the stock book.
 *
 * @param row     as it is written
 * @param sale    whether it can be bought
 * @param version grows by one with each change, so that two people who change it at once are told
 * @param changed when it last was
 */
public record StockEntry(StockRow row, Sale sale, int version, Instant changed) {}
