/**
 * One explainer. Read first: {@code ExplainerController}.
 */
@NullMarked
package fencerow.kiosk.explainer;

import org.jspecify.annotations.NullMarked;
