package hingewise.diagnosis;

import hingewise.casefile.Entry;

/** What an entry means to the phone's faults: something was observed, or something was changed. */
public sealed interface Happening permits Reading, Touch {
    /** The entry it comes from. */
    Entry entry();
}
