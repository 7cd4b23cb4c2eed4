/**
 * The quiz: one question a screen, an answer to it at once, and after a short run what it has shown. Read first: {@code
 * QuizController}.
 */
@NullMarked
package fencerow.kiosk.quiz;

import org.jspecify.annotations.NullMarked;
