#include "app/desktop/circuit/canvas_edits.h"
#include "app/desktop/circuit/circuit_scene.h"
#include "app/desktop/circuit/tool.h"
#include "core/parts/part_kind.h"

#include <QCoreApplication>

namespace pumpwright {
namespace {

/// Places copies of a prototype; a ghost shows where the next one goes.
class PlaceTool final : public Tool {
    Q_DECLARE_TR_FUNCTIONS(pumpwright::PlaceTool)

public:
    PlaceTool(ToolHost& toolHost, const Part& prototype) : Tool(toolHost), m_part(prototype) {}

    CanvasActivity activity() const override { return CanvasActivity::Place; }

    void activate() override {
        host().setCursorShape(Qt::CrossCursor);
        nameNext();
    }

    void press(const CanvasPointer& pointer) override {
        m_part.at = nearestGridPoint(pointer.at);
        const Addition addition = placing(host().document().circuit(), m_part, m_part.at);
        host().document().apply(addition.edit);
        host().selection().select(addition.objects);
        nameNext();
        m_shown = false;
        host().scene().setOverlay({});
    }

    void move(const CanvasPointer& pointer) override {
        if (!pointer.buttonDown) {
            m_part.at = nearestGridPoint(pointer.at);
            m_shown = true;
            showGhost();
        }
    }

    void release(const CanvasPointer&) override {}

    void leave() override {
        m_shown = false;
        host().scene().setOverlay({});
    }

    bool keyPress(int key, Qt::KeyboardModifiers) override {
        if (key == Qt::Key_R) {
            m_part.quarterTurns = (m_part.quarterTurns + 1) % 4;
        } else if (key == Qt::Key_M) {
            m_part.mirrored = !m_part.mirrored;
            m_part.quarterTurns = (4 - m_part.quarterTurns) % 4;
        } else {
            return false;
        }
        showGhost();
        return true;
    }

private:
    void nameNext() {
        m_part.reference = freeReference(host().document().circuit(), std::string(kindOf(m_part).letter()));
        host().setHint(tr("Click to place %1. R turns it, M mirrors it, Esc ends.")
                           .arg(QString::fromStdString(m_part.reference)));
    }

    void showGhost() {
        if (m_shown) {
            Overlay overlay;
            overlay.ghost = m_part;
            host().scene().setOverlay(overlay);
        }
    }

    Part m_part;
    bool m_shown = false; ///< the pointer has been over the canvas
};

} // namespace

std::unique_ptr<Tool> placeTool(ToolHost& host, const Part& prototype) {
    return std::make_unique<PlaceTool>(host, prototype);
}

} // namespace pumpwright
