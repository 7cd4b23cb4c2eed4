/**
 * What the quiz has shown: what is worth checking, and what the shopper knew. Read first: {@code OutcomeController}.
 */
@NullMarked
package fencerow.kiosk.outcome;

import org.jspecify.annotations.NullMarked;
