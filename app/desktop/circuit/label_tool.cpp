#include "app/desktop/circuit/circuit_scene.h"
#include "app/desktop/circuit/geometry.h"
#include "app/desktop/circuit/labels.h"
#include "app/desktop/circuit/tool.h"

#include <QCoreApplication>

namespace pumpwright {
namespace {

constexpr int kLargeStep_mm = 5;

/// Moves the texts of a part or wire: a preview until it is put down, then one edit.
class LabelTool final : public Tool {
    Q_DECLARE_TR_FUNCTIONS(pumpwright::LabelTool)

public:
    LabelTool(ToolHost& toolHost, StandingLabel label, std::optional<QPointF> pressedAt)
        : Tool(toolHost), m_label(std::move(label)), m_isDragged(pressedAt.has_value()),
          m_grabbedAt(pressedAt.value_or(m_label.rect.center())),
          m_first(nearestOffset(m_label.rect.center() - m_label.anchor)), m_from(m_first) {}

    void activate() override {
        host().setCursorShape(Qt::ClosedHandCursor);
        host().setHint(m_isDragged
                           ? tr("Release to put the label here. Esc leaves it where it was.")
                           : tr("Move the label with the pointer or the arrow keys, Shift makes larger "
                                "steps. A click or Return puts it here, Esc leaves it where it was."));
    }

    void press(const CanvasPointer&) override {
        if (!m_isDragged) {
            putDown();
        }
    }

    void move(const CanvasPointer& pointer) override {
        show(nearestOffset(m_label.rect.center() + pointer.at - m_grabbedAt - m_label.anchor));
    }

    void release(const CanvasPointer&) override {
        if (m_isDragged) {
            putDown();
        }
    }

    bool keyPress(int key, Qt::KeyboardModifiers modifiers) override {
        const int step = modifiers.testFlag(Qt::ShiftModifier) ? kLargeStep_mm : 1;
        switch (key) {
        case Qt::Key_Left:
            nudge({-step, 0});
            return true;
        case Qt::Key_Right:
            nudge({step, 0});
            return true;
        case Qt::Key_Up:
            nudge({0, -step});
            return true;
        case Qt::Key_Down:
            nudge({0, step});
            return true;
        case Qt::Key_Return:
        case Qt::Key_Enter:
            putDown();
            return true;
        default:
            return false;
        }
    }

private:
    Edit edit() { return labelling(host().document().circuit(), m_label.of, m_from); }

    void nudge(LabelOffset by) { show(nearestOffset(sceneDistance(m_from) + sceneDistance(by))); }

    void show(LabelOffset from) {
        if (from != m_from) {
            m_from = from;
            host().scene().preview(edit());
        }
    }

    void putDown() {
        host().scene().endPreview();
        if (m_from != m_first) {
            host().document().apply(edit());
        }
        host().switchTo(nullptr);
    }

    StandingLabel m_label;
    bool m_isDragged;
    QPointF m_grabbedAt;
    LabelOffset m_first; ///< where it stood
    LabelOffset m_from;
};

} // namespace

std::unique_ptr<Tool> labelTool(ToolHost& host, const StandingLabel& label,
                                const std::optional<QPointF>& pressedAt) {
    return std::make_unique<LabelTool>(host, label, pressedAt);
}

} // namespace pumpwright
