#pragma once

#include "app/desktop/document/selection.h"
#include "core/circuit/circuit.h"

#include <QString>

#include <vector>

namespace pumpwright {

// What the canvas's gestures and commands do to a circuit, as edits with the names that undo shows.

/// The pattern with "K1", "K1, F2" or "5 objects" for %1.
std::string editName(const QString& pattern, const Circuit& circuit, const SelectedObjects& objects);

Edit movement(const Circuit& circuit, const SelectedObjects& objects, GridPoint by);

/// A quarter turn clockwise round the middle of the parts; one part turns on the spot.
Edit rotation(const Circuit& circuit, const SelectedObjects& objects);
/// Left to right, about the middle of the parts.
Edit mirroring(const Circuit& circuit, const SelectedObjects& objects);
/// Takes away the objects, and the lines that end on the parts; a single part that only joins two wires
/// leaves one wire behind.
Edit removal(const Circuit& circuit, const SelectedObjects& objects);

/// The selected parts and the lines that join two of them, for the clipboard.
Circuit fragmentOf(const Circuit& circuit, const SelectedObjects& objects);

/// An edit that adds something, and what it adds.
struct Addition {
    Edit edit;
    SelectedObjects objects;
};

/// Adds a copy of the fragment, moved, with ids and references of its own.
Addition pasting(const Circuit& circuit, const Circuit& fragment, GridPoint by);
/// Adds a part like the prototype, with the next free reference.
Addition placing(const Circuit& circuit, const Part& prototype, GridPoint at);
/// Adds the wire or hose with the next free reference.
Addition joining(const Circuit& circuit, Wire wire);
Addition joining(const Circuit& circuit, Hose hose);

/// Fixes the corners of a wire's drawn route; without corners the program finds the route again.
Edit shaping(const Circuit& circuit, const WireId& id, std::vector<GridPoint> bends);
Edit shaping(const Circuit& circuit, const HoseId& id, std::vector<GridPoint> bends);

/// Everything there is.
SelectedObjects allObjects(const Circuit& circuit);
/// Without those that the circuit does not have.
SelectedObjects existing(const Circuit& circuit, SelectedObjects objects);

} // namespace pumpwright
