package fencerow.backoffice.document;

import java.util.List;

/**
 * What {@code doctor} prints.
 *
 * @param fine   whether a kiosk can run here; remarks don't keep it from that
 * @param checks everything that was looked at, in the order of starting up
 */
public record DoctorDocument(boolean fine, List<Check> checks) {
    /** Copies the list. */
    public DoctorDocument {
        checks = List.copyOf(checks);
    }

    /** What the checks come to. */
    public static DoctorDocument of(List<Check> checks) {
        return new DoctorDocument(checks.stream().noneMatch(each -> each.state().equals("lacking")), checks);
    }

    /**
     * One thing looked at.
     *
     * @param about    such as {@code display}
     * @param state    {@code fine}, {@code remark} or {@code lacking}
     * @param what     how it stands
     * @param whatToDo how to put it right; empty if it is fine
     */
    public record Check(String about, String state, String what, String whatToDo) {
        /** It is as it should be. */
        public static Check fine(String about, String what) {
            return new Check(about, "fine", what, "");
        }

        /** The kiosk runs, with something to know or to see to. */
        public static Check remark(String about, String what, String whatToDo) {
            return new Check(about, "remark", what, whatToDo);
        }

        /** The kiosk can't do its work. */
        public static Check lacking(String about, String what, String whatToDo) {
            return new Check(about, "lacking", what, whatToDo);
        }
    }
}
