#include "app/desktop/circuit/canvas_edits.h"
#include "app/desktop/circuit/circuit_scene.h"
#include "app/desktop/circuit/line_surgery.h"
#include "app/desktop/circuit/lining_up.h"
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
        m_part.at = placeAt(pointer);
        const Circuit& circuit = host().document().circuit();
        const auto wire = wireBelow(pointer);
        const Addition addition = wire ? inserting(circuit, m_part, wire->place.at, wire->id, wire->place)
                                       : placing(circuit, m_part, m_part.at);
        host().document().apply(addition.edit);
        host().selection().select(addition.objects);
        nameNext();
        m_shown = false;
        host().scene().setOverlay({});
    }

    void move(const CanvasPointer& pointer) override {
        if (!pointer.buttonDown) {
            m_part.at = placeAt(pointer);
            m_free = pointer.modifiers.testFlag(Qt::ControlModifier);
            m_shown = true;
            const auto wire = wireBelow(pointer);
            m_wireBelow = wire ? std::optional(wire->id) : std::nullopt;
            if (wire) {
                m_part.at = wire->place.at;
            }
            showGhost();
            sayNext();
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
    /// On the grid, in line with terminals that are there where one comes close.
    GridPoint placeAt(const CanvasPointer& pointer) {
        if (pointer.modifiers.testFlag(Qt::ControlModifier)) {
            return nearestGridPoint(pointer.at);
        }
        return linedUp(terminalsAtOrigin(), terminalsBeside(host().scene().layout(), {}), pointer.at);
    }

    std::vector<GridPoint> terminalsAtOrigin() const {
        Part part = m_part;
        part.at = {};
        return terminalsOf(part);
    }

    struct WireBelow {
        WireId id;
        CutPlace place;
    };

    /// The wire that a click would put the part into.
    std::optional<WireBelow> wireBelow(const CanvasPointer& pointer) {
        const SelectedObjects below = host().scene().objectAt(pointer.at, pointer.reach / 2);
        if (below.wires.empty() || !fitsIntoWire(m_part)) {
            return std::nullopt;
        }
        const WireId id = *below.wires.begin();
        const auto place = cutPlace(host().scene().layout().wires.at(id), pointer.at);
        return place ? std::optional(WireBelow{id, *place}) : std::nullopt;
    }

    void nameNext() {
        m_part.reference = freeReference(host().document().circuit(), std::string(kindOf(m_part).letter()));
        m_wireBelow.reset();
        sayNext();
    }

    void sayNext() {
        const QString reference = QString::fromStdString(m_part.reference);
        if (m_wireBelow) {
            const Wire& wire = host().document().circuit().wires.at(*m_wireBelow);
            host().setHint(tr("Click to insert %1 into %2. R turns it, M mirrors it, Esc ends.")
                               .arg(reference, QString::fromStdString(wire.reference)));
        } else {
            host().setHint(
                tr("Click to place %1. R turns it, M mirrors it; Ctrl, held, keeps it from going into line "
                   "with others. Esc ends.")
                    .arg(reference));
        }
    }

    void showGhost() {
        if (m_shown) {
            Overlay overlay;
            overlay.ghost = m_part;
            if (!m_free && !m_wireBelow) {
                overlay.guides =
                    guidesOf(terminalsAtOrigin(), terminalsBeside(host().scene().layout(), {}), m_part.at);
            }
            host().scene().setOverlay(overlay);
        }
    }

    Part m_part;
    std::optional<WireId> m_wireBelow; ///< for the hint
    bool m_free = false;               ///< Ctrl is held: nothing pulls it into line
    bool m_shown = false;              ///< the pointer has been over the canvas
};

} // namespace

std::unique_ptr<Tool> placeTool(ToolHost& host, const Part& prototype) {
    return std::make_unique<PlaceTool>(host, prototype);
}

} // namespace pumpwright
