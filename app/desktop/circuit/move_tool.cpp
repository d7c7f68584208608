#include "app/desktop/circuit/canvas_edits.h"
#include "app/desktop/circuit/circuit_scene.h"
#include "app/desktop/circuit/lining_up.h"
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
        const CircuitLayout& layout = host().scene().layout();
        m_moving = terminalsOf(layout, host().selection().objects().parts);
        m_staying = terminalsBeside(layout, host().selection().objects().parts);
        host().setCursorShape(Qt::ClosedHandCursor);
        host().setHint(
            tr("Release to put it here. Ctrl, held, keeps it from going into line with others. Esc "
               "leaves everything where it was."));
    }

    void press(const CanvasPointer&) override {}

    void move(const CanvasPointer& pointer) override {
        const bool free = pointer.modifiers.testFlag(Qt::ControlModifier);
        const QPointF way = pointer.at - m_pressedAt;
        const GridPoint by = free ? nearestGridPoint(way) : linedUp(m_moving, m_staying, way);
        if (by != m_by) {
            m_by = by;
            host().scene().preview(edit());
        }
        Overlay overlay;
        if (!free) {
            overlay.guides = guidesOf(m_moving, m_staying, by);
        }
        host().scene().setOverlay(overlay);
    }

    void release(const CanvasPointer&) override {
        host().scene().endPreview();
        host().document().apply(edit());
        host().switchTo(nullptr);
    }

private:
    Edit edit() { return movement(host().document().circuit(), host().selection().objects(), m_by); }

    QPointF m_pressedAt;
    std::vector<GridPoint> m_moving; ///< terminals where they were
    std::vector<GridPoint> m_staying;
    GridPoint m_by;
};

} // namespace

std::unique_ptr<Tool> moveTool(ToolHost& host, const QPointF& pressedAt) {
    return std::make_unique<MoveTool>(host, pressedAt);
}

} // namespace pumpwright
