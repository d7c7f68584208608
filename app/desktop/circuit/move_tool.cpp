#include "app/desktop/circuit/canvas_edits.h"
#include "app/desktop/circuit/circuit_scene.h"
#include "app/desktop/circuit/tool.h"

#include <QCoreApplication>

namespace pumpwright {
namespace {

/// Moves the selected parts: a preview until the button is released, then one edit.
class MoveTool final : public Tool {
    Q_DECLARE_TR_FUNCTIONS(pumpwright::MoveTool)

public:
    MoveTool(ToolHost& toolHost, const QPointF& pressedAt) : Tool(toolHost), m_pressedAt(pressedAt) {}

    void activate() override {
        host().setCursorShape(Qt::ClosedHandCursor);
        host().setHint(tr("Release to put it here. Esc leaves everything where it was."));
    }

    void press(const CanvasPointer&) override {}

    void move(const CanvasPointer& pointer) override {
        const GridPoint by = nearestGridPoint(pointer.at - m_pressedAt);
        if (by != m_by) {
            m_by = by;
            host().scene().preview(edit());
        }
    }

    void release(const CanvasPointer&) override {
        host().scene().endPreview();
        host().document().apply(edit());
        host().switchTo(nullptr);
    }

private:
    Edit edit() { return movement(host().document().circuit(), host().selection().objects(), m_by); }

    QPointF m_pressedAt;
    GridPoint m_by;
};

} // namespace

std::unique_ptr<Tool> moveTool(ToolHost& host, const QPointF& pressedAt) {
    return std::make_unique<MoveTool>(host, pressedAt);
}

} // namespace pumpwright
