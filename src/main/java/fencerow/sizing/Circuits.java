package fencerow.sizing;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/**
 * Hydraulic circuits that a set of tools asks for.
 *
 * <p>Formula: used at once, circuits add up; used one after another, the most demanding tool decides at each end.
 *
 * <p>Source: {@link HydraulicTool}. Caution: {@link Caution#OIL_INJECTION}, {@link Caution#RELIEVE_PRESSURE}.
 *
 * @param front at the loader, beyond lift and curl
 * @param rear  at the rear
 * @param needs what circuits must be able to do
 */
public record Circuits(int front, int rear, Set<HydraulicTool.Need> needs) {
    /** Copies the needs, in their own order. */
    public Circuits {
        Set<HydraulicTool.Need> copy = EnumSet.noneOf(HydraulicTool.Need.class);
        copy.addAll(needs);
        needs = Collections.unmodifiableSet(copy);
    }

    /** For tools used together. */
    public static Circuits atOnce(Collection<HydraulicTool> tools) {
        int front = 0;
        int rear = 0;
        for (HydraulicTool tool : tools) {
            front += tool.front();
            rear += tool.rear();
        }
        return new Circuits(front, rear, needs(tools));
    }

    /** For tools used one after another. */
    public static Circuits oneAtATime(Collection<HydraulicTool> tools) {
        int front = 0;
        int rear = 0;
        for (HydraulicTool tool : tools) {
            front = Math.max(front, tool.front());
            rear = Math.max(rear, tool.rear());
        }
        return new Circuits(front, rear, needs(tools));
    }

    private static Set<HydraulicTool.Need> needs(Collection<HydraulicTool> tools) {
        Set<HydraulicTool.Need> all = EnumSet.noneOf(HydraulicTool.Need.class);
        tools.forEach(tool -> all.addAll(tool.needs()));
        return all;
    }
}
