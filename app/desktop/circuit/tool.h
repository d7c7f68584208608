#pragma once

#include "app/desktop/circuit/circuit_view.h"
#include "app/desktop/document/selection.h"

#include <QPointF>
#include <QString>

#include <memory>
#include <optional>

namespace pumpwright {

class CircuitScene;
class Document;
class HandOperation;
class Tool;
struct StandingLabel;

/// A mouse event in scene coordinates.
struct CanvasPointer {
    QPointF at;
    Qt::KeyboardModifiers modifiers;
    double reach = 12; ///< how far from a thing a click still means it: 12 pixels, in scene units
    bool buttonDown = false;
};

/// What tools work with. Owned by the view.
class ToolHost {
public:
    virtual ~ToolHost() = default;
    virtual Document& document() = 0;
    virtual Selection& selection() = 0;
    virtual CircuitScene& scene() = 0;
    virtual void setHint(const QString& text) = 0;
    /// Takes over at once; the tool before lives on until its event is handled. Null goes back to selecting.
    virtual void switchTo(std::unique_ptr<Tool> next) = 0;
    /// What a new wire or hose is like before somebody changes it.
    virtual Wire newWire() const = 0;
    virtual Hose newHose() const = 0;
    virtual void setCursorShape(Qt::CursorShape shape) = 0;
};

/// A gesture. Until it is complete it shows overlays and previews only; then it makes one edit.
class Tool {
public:
    explicit Tool(ToolHost& host) : m_host(host) {}
    virtual ~Tool() = default;

    virtual CanvasActivity activity() const { return CanvasActivity::Select; }
    virtual void activate() {}
    /// Takes back all that it shows. Nothing may be left of a half-done gesture.
    virtual void deactivate();

    virtual void press(const CanvasPointer& pointer) = 0;
    virtual void move(const CanvasPointer& pointer) = 0;
    virtual void release(const CanvasPointer& pointer) = 0;
    virtual void leave() {}
    /// Whether the key is text for the tool, so that it is no shortcut now.
    virtual bool wantsText(int, Qt::KeyboardModifiers) const { return false; }
    /// True where the key was for the tool.
    virtual bool keyPress(int key, Qt::KeyboardModifiers modifiers);
    virtual void keyRelease(int key) { static_cast<void>(key); }

protected:
    ToolHost& host() { return m_host; }

private:
    ToolHost& m_host;
};

/// Farther than this, in scene units at zoom 1, a press becomes a drag.
inline constexpr double kDragDistance = 5;

std::unique_ptr<Tool> selectTool(ToolHost& host);
/// Moves the selection from a press to the release.
std::unique_ptr<Tool> moveTool(ToolHost& host, const QPointF& pressedAt);
std::unique_ptr<Tool> bandTool(ToolHost& host, const QPointF& pressedAt);
std::unique_ptr<Tool> placeTool(ToolHost& host, const Part& prototype);
/// Drags a straight stretch of a wire or hose.
std::unique_ptr<Tool> layTool(ToolHost& host, const SelectedObjects& line, const QPointF& pressedAt);
/// Moves a label from a press to the release; without a press by pointer or keys until a click or Return.
std::unique_ptr<Tool> labelTool(ToolHost& host, const StandingLabel& label,
                                const std::optional<QPointF>& pressedAt);
/// Draw wires or hoses until Esc, or `Once`: one, by a drag.
enum class Repeat { Once, UntilEscape };
std::unique_ptr<Tool> wireTool(ToolHost& host, Repeat repeat);
std::unique_ptr<Tool> hoseTool(ToolHost& host, Repeat repeat);
/// Moves switches and the pedal of the circuit that runs in real time, as long as this is the tool.
std::unique_ptr<Tool> handTool(ToolHost& host, HandOperation& operation);

} // namespace pumpwright
