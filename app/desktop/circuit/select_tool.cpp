#include "app/desktop/circuit/circuit_scene.h"
#include "app/desktop/circuit/tool.h"

#include <QCoreApplication>
#include <QLineF>

namespace pumpwright {
namespace {

constexpr double kGrabShare = 0.6; ///< of the reach: a terminal is grabbed more narrowly than it is caught

SelectedObjects joined(SelectedObjects a, const SelectedObjects& b) {
    a.parts.insert(b.parts.begin(), b.parts.end());
    a.wires.insert(b.wires.begin(), b.wires.end());
    a.hoses.insert(b.hoses.begin(), b.hoses.end());
    return a;
}

template <class Id>
bool toggleOne(std::set<Id>& ids, const std::set<Id>& one) {
    for (const Id& id : one) {
        if (ids.erase(id) == 0) {
            ids.insert(id);
        }
    }
    return !one.empty();
}

bool containsAll(const SelectedObjects& all, const SelectedObjects& some) {
    return joined(all, some) == all;
}

/// Selects by click; hands over to other tools when a drag shows what is meant.
class SelectTool final : public Tool {
    Q_DECLARE_TR_FUNCTIONS(pumpwright::SelectTool)

public:
    using Tool::Tool;

    void activate() override {
        host().setCursorShape(Qt::ArrowCursor);
        host().setHint(tr("Click selects, Shift adds. Drag moves parts, wires and labels; drag from a "
                          "terminal draws a wire."));
    }

    void press(const CanvasPointer& pointer) override {
        m_pressedAt = pointer.at;
        m_grabbed = grabbedAt(pointer);
        m_object = host().scene().objectOrNamedAt(pointer.at, pointer.reach);
        m_label = host().scene().labelAt(pointer.at, pointer.reach);
        m_wasSelected = containsAll(host().selection().objects(), m_object);
        m_pressed = true;
        if (pointer.modifiers & Qt::ShiftModifier) {
            toggle();
        } else if (!m_object.empty() && !m_wasSelected) {
            host().selection().select(m_object);
        }
    }

    void move(const CanvasPointer& pointer) override {
        if (!m_pressed) {
            showHover(pointer);
        } else if (QLineF(pointer.at, m_pressedAt).length() > pointer.reach / kReach_px * kDragDistance) {
            m_pressed = false;
            startDrag(pointer);
        }
    }

    void release(const CanvasPointer& pointer) override {
        if (m_pressed && !(pointer.modifiers & Qt::ShiftModifier)) {
            host().selection().select(m_object);
        }
        m_pressed = false;
    }

    void leave() override { Tool::deactivate(); }

    bool keyPress(int key, Qt::KeyboardModifiers) override {
        if (key != Qt::Key_Escape) {
            return false;
        }
        m_pressed = false;
        host().selection().select({});
        return true;
    }

private:
    /// The terminal from which a drag would draw. A splice is moved by a drag, as it is nothing but terminal.
    std::optional<CircuitScene::Caught> grabbedAt(const CanvasPointer& pointer) {
        auto caught = host().scene().connectionAt(pointer.at, kGrabShare * pointer.reach);
        return caught && !caught->point.freeExit ? caught : std::nullopt;
    }

    void toggle() {
        SelectedObjects objects = host().selection().objects();
        toggleOne(objects.parts, m_object.parts);
        toggleOne(objects.wires, m_object.wires);
        toggleOne(objects.hoses, m_object.hoses);
        host().selection().select(objects);
    }

    void startDrag(const CanvasPointer& pointer) {
        const bool adds = pointer.modifiers.testFlag(Qt::ShiftModifier);
        std::unique_ptr<Tool> next;
        if (m_grabbed && !adds) {
            next = m_grabbed->point.isPort ? hoseTool(host(), Repeat::Once) : wireTool(host(), Repeat::Once);
            host().selection().select({});
        } else if (m_label && !adds) {
            next = labelTool(host(), *m_label, m_pressedAt);
        } else if (!m_object.parts.empty()) {
            next = moveTool(host(), m_pressedAt);
        } else if (!m_object.empty()) {
            next = layTool(host(), m_object, m_pressedAt);
        } else {
            next = bandTool(host(), m_pressedAt);
        }
        CanvasPointer start = pointer;
        start.at = m_pressedAt;
        Tool* const tool = next.get();
        host().switchTo(std::move(next));
        tool->press(start);
        tool->move(pointer);
    }

    void showHover(const CanvasPointer& pointer) {
        Overlay overlay;
        if (const auto caught = grabbedAt(pointer)) {
            overlay.caught = caught->point.at;
            overlay.caughtText = connectionText(host().scene().circuit(), *caught);
        }
        host().scene().setOverlay(overlay);
        host().scene().setHovered(overlay.caught ? SelectedObjects{}
                                                 : host().scene().objectOrNamedAt(pointer.at, pointer.reach));
    }

    QPointF m_pressedAt;
    std::optional<CircuitScene::Caught> m_grabbed;
    SelectedObjects m_object;
    std::optional<StandingLabel> m_label;
    bool m_wasSelected = false;
    bool m_pressed = false;
};

} // namespace

std::unique_ptr<Tool> selectTool(ToolHost& host) {
    return std::make_unique<SelectTool>(host);
}

} // namespace pumpwright
