package fencerow.visit;

import java.time.LocalDate;

/**
 * A code that a visit was kept under.
 *
 * @param code    as it is printed
 * @param lastDay the last day it brings the visit back
 */
public record ReturnCode(String code, LocalDate lastDay) {}
