#include "app/desktop/circuit/circuit_scene.h"
#include "app/desktop/circuit/tool.h"

#include <QCoreApplication>

namespace pumpwright {
namespace {

/// Selects everything inside a rubber band.
class BandTool final : public Tool {
    Q_DECLARE_TR_FUNCTIONS(pumpwright::BandTool)

public:
    BandTool(ToolHost& toolHost, const QPointF& pressedAt) : Tool(toolHost), m_pressedAt(pressedAt) {}

    void activate() override {
        m_before = host().selection().objects();
        host().setHint(tr("Release to select what lies inside; with Shift it is added."));
    }

    void press(const CanvasPointer&) override {}

    void move(const CanvasPointer& pointer) override {
        const QRectF band = QRectF(m_pressedAt, pointer.at).normalized();
        Overlay overlay;
        overlay.band = band;
        host().scene().setOverlay(overlay);
        SelectedObjects objects = host().scene().objectsIn(band);
        if (pointer.modifiers & Qt::ShiftModifier) {
            objects.parts.insert(m_before.parts.begin(), m_before.parts.end());
            objects.wires.insert(m_before.wires.begin(), m_before.wires.end());
            objects.hoses.insert(m_before.hoses.begin(), m_before.hoses.end());
        }
        host().selection().select(objects);
    }

    void release(const CanvasPointer&) override { host().switchTo(nullptr); }

    bool keyPress(int key, Qt::KeyboardModifiers) override {
        if (key == Qt::Key_Escape) {
            host().selection().select(m_before);
        }
        return false;
    }

private:
    QPointF m_pressedAt;
    SelectedObjects m_before;
};

} // namespace

std::unique_ptr<Tool> bandTool(ToolHost& host, const QPointF& pressedAt) {
    return std::make_unique<BandTool>(host, pressedAt);
}

} // namespace pumpwright
