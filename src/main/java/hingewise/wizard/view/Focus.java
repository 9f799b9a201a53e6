package hingewise.wizard.view;

import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;

/** Keeps the keyboard where it was while a view is drawn anew. */
final class Focus {
    private Focus() {}

    /** Draws anew; if the focus was on a part with an id, it goes to the new part of this id. */
    static void keeping(Parent view, Runnable drawing) {
        Scene scene = view.getScene();
        Node owner = scene == null ? null : scene.getFocusOwner();
        String id = owner != null && isInside(owner, view) ? owner.getId() : null;
        drawing.run();
        if (id != null) {
            Node again = find(view, id);
            if (again != null) {
                again.requestFocus();
            }
        }
    }

    private static boolean isInside(Node node, Parent view) {
        for (Node at = node; at != null; at = at.getParent()) {
            if (at == view) {
                return true;
            }
        }
        return false;
    }

    /** The part with this id, found without CSS, for ids of rule books may hold any letters. */
    static @org.jspecify.annotations.Nullable Node find(Parent view, String id) {
        for (Node child : view.getChildrenUnmodifiable()) {
            if (id.equals(child.getId())) {
                return child;
            }
            Node inside = child instanceof Parent parent ? find(parent, id) : null;
            if (inside != null) {
                return inside;
            }
        }
        return null;
    }
}
