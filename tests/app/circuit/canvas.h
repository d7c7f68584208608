#pragma once

#include "app/desktop/circuit/circuit_view.h"
#include "app/desktop/circuit/geometry.h"
#include "app/desktop/document/analysis.h"
#include "app/desktop/document/document.h"
#include "app/desktop/document/selection.h"
#include "core/files/circuit_file.h"
#include "core/parts/part_kind.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"

#include <QTest>

namespace pumpwright {

/// A fuse at 0,0 and a relay at 12,0 (places of the builder), no wires.
inline Circuit fuseAndRelay() {
    return CircuitBuilder()
        .part("fuse", "F1")
        .part("relay", "K1")
        .part("reservoir", "C1")
        .part("tee", "X1")
        .build();
}

/// A canvas in a window, with gestures in grid steps.
class Canvas {
public:
    explicit Canvas(const Circuit& circuit = fuseAndRelay()) {
        view.resize(1000, 700);
        view.show();
        document.startNew(circuit);
        QCoreApplication::processEvents();
    }

    QPoint pixel(double x, double y) const { return view.mapFromScene(QPointF(x * kStep, y * kStep)); }

    void press(double x, double y, Qt::KeyboardModifiers modifiers = {}) {
        QTest::mousePress(view.viewport(), Qt::LeftButton, modifiers, pixel(x, y));
    }
    void moveTo(double x, double y) { QTest::mouseMove(view.viewport(), pixel(x, y)); }
    void release(double x, double y, Qt::KeyboardModifiers modifiers = {}) {
        QTest::mouseRelease(view.viewport(), Qt::LeftButton, modifiers, pixel(x, y));
    }
    void click(double x, double y, Qt::KeyboardModifiers modifiers = {}) {
        moveTo(x, y);
        press(x, y, modifiers);
        release(x, y, modifiers);
    }
    void drag(double fromX, double fromY, double toX, double toY, Qt::KeyboardModifiers modifiers = {}) {
        press(fromX, fromY, modifiers);
        dragTo((fromX + toX) / 2, (fromY + toY) / 2, modifiers);
        dragTo(toX, toY, modifiers);
        release(toX, toY, modifiers);
    }
    /// QTest::mouseMove forgets the button, so the event is made here.
    void dragTo(double x, double y, Qt::KeyboardModifiers modifiers = {}) {
        const QPointF at = pixel(x, y);
        QMouseEvent event(QEvent::MouseMove, at, view.viewport()->mapToGlobal(at), Qt::NoButton,
                          Qt::LeftButton, modifiers);
        QCoreApplication::sendEvent(view.viewport(), &event);
    }
    void key(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) { QTest::keyClick(&view, key, modifiers); }

    std::string bytes() const { return circuitText(document.circuit()); }
    int steps() { return document.undoStack().count(); }
    /// Letters and figures as they are typed.
    void type(const char* text) { QTest::keyClicks(&view, QString::fromLatin1(text)); }
    const Part& part(const std::string& id) const { return document.circuit().parts.at({id}); }

    Document document;
    Selection selection;
    Analysis analysis{document};
    CircuitView view{document, selection, analysis};
};

inline Part prototype(const char* kind) {
    return newPart(*findPartKind(kind), "", {});
}

} // namespace pumpwright
