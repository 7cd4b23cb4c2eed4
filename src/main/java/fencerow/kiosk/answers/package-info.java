/**
 * Every question that applies with its answer; a touch leads to the question, to change it. Read first: {@code
 * AnswersController}.
 */
@NullMarked
package fencerow.kiosk.answers;

import org.jspecify.annotations.NullMarked;
