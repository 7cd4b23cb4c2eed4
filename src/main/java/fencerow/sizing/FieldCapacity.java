package fencerow.sizing;

import fencerow.terms.Area;
import fencerow.terms.Length;
import fencerow.terms.Ratio;
import fencerow.terms.Speed;
import fencerow.terms.Time;
import fencerow.terms.WorkRate;

/**
 * Effective field capacity: the area a tool really covers in a time.
 *
 * <p>Formula: {@code C = v w e}, with speed v [m/s], cutting width w [m] and field efficiency e [-]. In the trade's
 * units {@code ac/h = mph x ft x e / 8.25}.
 *
 * <p>Source: {@link Source#FIELD_CAPACITY_BULLETIN}, {@link Source#FIELD_CAPACITY_CALCULATION}. Valid for open areas
 * above about one acre; on smaller ones turning dominates, so give a range of efficiencies. The efficiency already
 * holds turning, overlap and short stops: do not take overlap off twice. Caution:
 * {@link Caution#SPEED_ON_ROUGH_GROUND}, {@link Caution#THROWN_OBJECTS}.
 */
public final class FieldCapacity {
    /** Cutting or working width, 1 ft to 66 ft; not the overall width. */
    public static final Bounds<Length> WIDTH =
            new Bounds<>("width", Length.ofFeet(1), Length.ofFeet(66));
    /** Travel speed, 0.1 to 15 mph. */
    public static final Bounds<Speed> SPEED = new Bounds<>("speed", Speed.ofMph(0.1), Speed.ofMph(15));
    /** Field efficiency, 20 to 100 %. */
    public static final Bounds<Ratio> EFFICIENCY =
            new Bounds<>("efficiency", Ratio.ofPercent(20), Ratio.ofPercent(100));
    /** Area to cover, 100 ft2 to 1,000 acres. */
    public static final Bounds<Area> AREA = new Bounds<>("area", Area.ofSquareFeet(100), Area.ofAcres(1000));
    /** Time to cover it in, one minute to 1,000 hours. */
    public static final Bounds<Time> TIME = new Bounds<>("time", Time.ofMinutes(1), Time.ofHours(1000));

    private FieldCapacity() {}

    /**
     * Area covered in a time.
     *
     * @throws OutOfRangeException outside {@link #WIDTH}, {@link #SPEED} or {@link #EFFICIENCY}
     */
    public static WorkRate rate(Length width, Speed speed, Ratio efficiency) {
        return new WorkRate(WIDTH.check(width) * SPEED.check(speed) * EFFICIENCY.check(efficiency));
    }

    /**
     * Time to cover an area.
     *
     * @throws OutOfRangeException outside {@link #AREA} or the limits of {@link #rate}
     */
    public static Time time(Area area, Length width, Speed speed, Ratio efficiency) {
        return new Time(AREA.check(area) / rate(width, speed, efficiency).si());
    }

    /**
     * Width needed to cover an area in the time there is. May come out wider than any tool.
     *
     * @throws OutOfRangeException outside {@link #AREA}, {@link #TIME}, {@link #SPEED} or {@link #EFFICIENCY}
     */
    public static Length widthToFinish(Area area, Time time, Speed speed, Ratio efficiency) {
        return new Length(
                AREA.check(area) / (TIME.check(time) * SPEED.check(speed) * EFFICIENCY.check(efficiency)));
    }

    /**
     * Field efficiency where overlap is known apart from the share of time spent working:
     * {@code e = (1 - overlap / width) x time factor}.
     *
     * @throws OutOfRangeException if the overlap is negative or wider than the tool, or outside the other limits
     */
    public static Ratio efficiency(Length overlap, Length width, Ratio timeFactor) {
        double wide = WIDTH.check(width);
        double lost = new Bounds<>("overlap", Length.ofMeters(0), width).check(overlap);
        return new Ratio((1 - lost / wide) * EFFICIENCY.as("time-factor").check(timeFactor));
    }

    /** Speed over a paced distance by stop-watch: 88 ft in 12 s is 5 mph. Both above zero. */
    public static Speed timed(Length distance, Time time) {
        if (distance.si() <= 0 || time.si() <= 0) {
            throw new IllegalArgumentException(
                    "timed run of " + distance.si() + " m in " + time.si() + " s; give both above zero");
        }
        return new Speed(distance.si() / time.si());
    }
}
