#include "app/desktop/circuit/circuit_scene.h"
#include "app/desktop/circuit/tool.h"
#include "app/desktop/document/hand_operation.h"
#include "app/desktop/shown_text.h"

#include <QCoreApplication>

#include <algorithm>

namespace pumpwright {
namespace {

/// A click moves a switch; the pedal is pressed as long as the button, or a key, is held on it.
class HandTool final : public Tool {
    Q_DECLARE_TR_FUNCTIONS(pumpwright::HandTool)

public:
    HandTool(ToolHost& host, HandOperation& operation) : Tool(host), m_operation(operation) {}

    CanvasActivity activity() const override { return CanvasActivity::Operate; }

    void activate() override {
        host().selection().select({});
        host().setCursorShape(Qt::ArrowCursor);
        m_operation.begin();
        sayWhatIsNext({});
    }

    void deactivate() override {
        m_operation.end();
        Tool::deactivate();
    }

    void press(const CanvasPointer& pointer) override {
        if (const auto part = controlAt(pointer)) {
            operate(*part);
        }
    }

    void release(const CanvasPointer&) override { m_operation.releasePedal(); }

    void move(const CanvasPointer& pointer) override {
        const auto part = controlAt(pointer);
        host().setCursorShape(part ? Qt::PointingHandCursor : Qt::ArrowCursor);
        host().scene().setHovered(part ? SelectedObjects{{*part}, {}, {}} : SelectedObjects{});
        sayWhatIsNext(part);
    }

    void leave() override {
        host().scene().setHovered({});
        sayWhatIsNext({});
    }

    /// Arrow keys go from control to control, Return moves the chosen switch or presses and releases the
    /// pedal, B brakes as long as it is held.
    bool keyPress(int key, Qt::KeyboardModifiers modifiers) override {
        const bool plain = modifiers == Qt::NoModifier || modifiers == Qt::KeypadModifier;
        if (!plain) {
            return false;
        }
        switch (key) {
        case Qt::Key_Right:
        case Qt::Key_Down:
            choose(1);
            return true;
        case Qt::Key_Left:
        case Qt::Key_Up:
            choose(-1);
            return true;
        case Qt::Key_Return:
        case Qt::Key_Enter:
            operateChosen();
            return true;
        case Qt::Key_B:
            m_operation.pressPedal();
            return true;
        default:
            return false;
        }
    }

    void keyRelease(int key) override {
        if (key == Qt::Key_B) {
            m_operation.releasePedal();
        }
    }

private:
    const std::map<PartId, Part>& parts() { return host().document().circuit().parts; }

    std::optional<PartId> controlAt(const CanvasPointer& pointer) {
        const SelectedObjects under = host().scene().objectAt(pointer.at, pointer.reach);
        const auto found = under.parts.empty() ? parts().end() : parts().find(*under.parts.begin());
        return found == parts().end() || controlOf(found->second) == Control::None
                   ? std::nullopt
                   : std::optional(found->first);
    }

    void operate(const PartId& part) {
        if (controlOf(parts().at(part)) == Control::Switch) {
            m_operation.moveSwitch(part, !m_operation.isSwitchOn(part));
            sayWhatIsNext(part);
        } else {
            m_operation.pressPedal();
        }
    }

    void choose(int step) {
        std::vector<PartId> controls;
        for (const auto& [id, part] : parts()) {
            if (controlOf(part) != Control::None) {
                controls.push_back(id);
            }
        }
        if (controls.empty()) {
            return;
        }
        const auto& chosen = host().selection().objects().parts;
        const auto at =
            chosen.empty() ? controls.end() : std::find(controls.begin(), controls.end(), *chosen.begin());
        const auto count = static_cast<std::ptrdiff_t>(controls.size());
        const std::ptrdiff_t first = step > 0 ? 0 : count - 1;
        const std::ptrdiff_t next =
            at == controls.end() ? first : (at - controls.begin() + step + count) % count;
        const PartId& part = controls[static_cast<std::size_t>(next)];
        host().selection().show({{part}, {}, {}});
        sayWhatIsNext(part);
    }

    void operateChosen() {
        const auto& chosen = host().selection().objects().parts;
        if (chosen.empty() || controlOf(parts().at(*chosen.begin())) == Control::None) {
            return;
        }
        if (m_operation.isPedalPressed() && controlOf(parts().at(*chosen.begin())) == Control::Pedal) {
            m_operation.releasePedal();
        } else {
            operate(*chosen.begin());
        }
    }

    void sayWhatIsNext(const std::optional<PartId>& part) {
        if (!part) {
            host().setHint(tr("Click a switch to move it; hold the pedal, or B, to brake. Esc ends."));
            return;
        }
        const QString reference = shown(parts().at(*part).reference);
        if (controlOf(parts().at(*part)) == Control::Pedal) {
            host().setHint(tr("Hold the button on %1 to brake, let go to release. Esc ends.").arg(reference));
        } else {
            host().setHint((m_operation.isSwitchOn(*part) ? tr("A click switches %1 off. Esc ends.")
                                                          : tr("A click switches %1 on. Esc ends."))
                               .arg(reference));
        }
    }

    HandOperation& m_operation;
};

} // namespace

std::unique_ptr<Tool> handTool(ToolHost& host, HandOperation& operation) {
    return std::make_unique<HandTool>(host, operation);
}

} // namespace pumpwright
