package fencerow.kiosk.frame;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.lang.management.MemoryUsage;

/** How much room is left in memory. */
final class Room {
    private static final double FULL = 0.9;

    private Room() {}

    /** Whether what has to be kept fills a pool of the heap so far that it will not last; as of the last collection. */
    static boolean isShort() {
        return ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == MemoryType.HEAP && pool.isCollectionUsageThresholdSupported())
                .anyMatch(Room::isFull);
    }

    private static boolean isFull(MemoryPoolMXBean pool) {
        MemoryUsage left = pool.getCollectionUsage();
        return left != null && left.getMax() > 0 && left.getUsed() > FULL * left.getMax();
    }
}
