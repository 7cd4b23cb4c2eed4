package fencerow.kiosk.print;

import java.util.Optional;

/**
 * What is said of the code to come back with.
 *
 * @param code  as it is to be written down; empty as long as there is none
 * @param words what it does, or why there is none
 * @param offer whether a touch makes one
 */
record CodeCard(Optional<String> code, String words, boolean offer) {}
