package fencerow.match;

import fencerow.terms.FeatureId;
import fencerow.terms.PriceRange;

/**
 * A feature nobody has checked that matters to this shopper.
 *
 * @param feature the feature
 * @param saves   what the plan costs less if it is there, all else as in the headline: nothing to this range
 * @param flips   whether it is one of the fewest features that turn the verdict to ready
 */
public record Verify(FeatureId feature, PriceRange saves, boolean flips) {}
