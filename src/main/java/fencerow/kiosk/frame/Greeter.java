package fencerow.kiosk.frame;

import javafx.scene.Parent;

/** Makes the page that is there first. */
public interface Greeter {
    /** What to greet with the next time. */
    Greeting greeting(Premises premises);

    /**
     * The page.
     *
     * @param touched called when somebody wants to start, and by each further touch
     */
    Parent page(Greeting greeting, Runnable touched);
}
