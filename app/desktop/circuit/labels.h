#pragma once

#include "app/desktop/circuit/layout.h"
#include "app/desktop/document/selection.h"

#include <optional>

namespace pumpwright {

/// The texts of a part, or the text of a wire, that stand together and can be moved.
struct StandingLabel {
    SelectedObjects of; ///< the one part or wire
    QRectF rect;        ///< in scene coordinates
    QPointF anchor;     ///< from where its offset is counted
};

/// The label of this one part or wire, if it has one.
std::optional<StandingLabel> labelOf(const CircuitLayout& layout, const SelectedObjects& one);
/// The smallest label that covers a place.
std::optional<StandingLabel> labelAt(const CircuitLayout& layout, const QPointF& at);

/// Lets the label stand so far from its anchor.
Edit labelling(const Circuit& circuit, const SelectedObjects& one, LabelOffset from);
/// Leaves the labels of these parts, wires and hoses to the program.
Edit freeLabels(const Circuit& circuit, const SelectedObjects& objects);
/// Whether somebody moved one of their labels.
bool hasMovedLabel(const Circuit& circuit, const SelectedObjects& objects);

} // namespace pumpwright
