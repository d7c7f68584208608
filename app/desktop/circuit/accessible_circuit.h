#pragma once

#include "app/desktop/circuit/tool.h"
#include "app/desktop/document/analysis.h"
#include "app/desktop/document/document.h"

#include <QAccessibleWidget>

#include <compare>
#include <functional>
#include <map>
#include <optional>
#include <variant>
#include <vector>

namespace pumpwright {

class CircuitView;

/// A finding as the tree knows it: another check may bring it again.
struct FindingRef {
    std::string rule;
    std::vector<std::string> subjects;
    int nth = 0; ///< of those with the same rule and subjects
    friend auto operator<=>(const FindingRef&, const FindingRef&) = default;
};

/// One child of the canvas for a screen reader.
using CanvasObject = std::variant<PartId, WireId, HoseId, FindingRef>;

/// The canvas for screen readers: its children are all parts, wires, hoses and findings, then the widgets on
/// it. Owned by Qt, as the interface of the view.
class AccessibleCircuit final : public QAccessibleWidget {
public:
    AccessibleCircuit(CircuitView& view, ToolHost& canvas, Analysis& analysis);
    ~AccessibleCircuit() override;

    int childCount() const override;
    QAccessibleInterface* child(int index) const override;
    int indexOfChild(const QAccessibleInterface* child) const override;
    QAccessibleInterface* childAt(int x, int y) const override;
    QAccessibleInterface* focusChild() const override;
    QAccessible::State state() const override;

    /// Hears what screen readers are told, in their place; a test has none.
    using Listener = std::function<void(QAccessibleEvent&)>;
    void setListener(const Listener& listener) { m_listener = listener; }

    CircuitView& view() const { return m_view; }
    Selection& selection() const { return m_canvas.selection(); }

    /// What the tree shows of a child; each is empty or false for one that is gone.
    bool contains(const CanvasObject& object) const;
    QString nameOf(const CanvasObject& object) const;
    QString stateTextOf(const CanvasObject& object) const;
    QRect boundsOf(const CanvasObject& object) const; ///< on the screen
    bool isSelected(const CanvasObject& object) const;
    bool hasFocus(const CanvasObject& object) const;
    /// What selecting it selects: itself, or what a finding is about.
    SelectedObjects meaningOf(const CanvasObject& object) const;

private:
    QAccessibleInterface* access(const CanvasObject& object) const;
    const Finding* findingOf(const FindingRef& ref) const;
    const Circuit& circuit() const { return m_canvas.document().circuit(); }
    std::vector<CanvasObject> objectsNow() const;
    void take(std::vector<CanvasObject> objects);
    bool isHeard() const { return m_listener || QAccessible::isActive(); }
    void send(QAccessibleEvent event) const;
    /// The one selected object, which the keys of the canvas are for.
    std::optional<CanvasObject> current() const;
    void follow(bool everything);
    void forgetVanished();
    void tellSelection();
    void tellState();

    CircuitView& m_view;
    ToolHost& m_canvas;
    Analysis& m_analysis;
    std::vector<CanvasObject> m_objects;                     ///< in the order of the tree
    std::map<CanvasObject, int> m_places;                    ///< of each in it
    mutable std::map<CanvasObject, QAccessible::Id> m_known; ///< those that somebody has asked for
    QString m_toldState;                                     ///< of the current object
    Listener m_listener;
    QObject m_connections;
};

} // namespace pumpwright
