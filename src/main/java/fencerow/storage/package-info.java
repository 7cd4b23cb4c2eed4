/**
 * The database behind the interfaces that {@code desk} owns, its migrations and its backups: one file, in a folder that
 * nothing else writes to.
 *
 * <p>The one part that knows SQL. Written so that another SQL database can stand behind the same interfaces: whole
 * numbers and ISO texts, no word of SQL that only one database knows outside {@code DatabaseFile}.
 *
 * <p>May use {@code terms}, {@code stock}, {@code desk}, {@code visit}. Read first: {@code Store}.
 */
@Part(floor = 4, mayUse = {"terms", "stock", "desk", "visit"})
@NullMarked
package fencerow.storage;

import fencerow.terms.Part;
import org.jspecify.annotations.NullMarked;
