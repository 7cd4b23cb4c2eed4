/**
 * The documents that commands print with {@code --json}: one record type for each, every field described where it is
 * declared. Read first: {@code MatchDocument}.
 *
 * <p>Common to all: names are in camel case and in the order declared; every name is always there, and a value that
 * does not exist is {@code null}; dollars have two decimals; other amounts are in SI units, to nine digits; ids are
 * those of the content; sentences are in the language asked for and are for people, so they may change.
 */
@NullMarked
package fencerow.backoffice.document;

import org.jspecify.annotations.NullMarked;
