#pragma once

#include "app/desktop/document/selection.h"
#include "core/circuit/circuit.h"

#include <array>

namespace pumpwright {

/// How parts can be put in order. "Across" is from left to right on the sheet, "down" from top to bottom.
enum class Arrangement {
    LeftEdges,
    MiddlesAcross, ///< one below the other
    RightEdges,
    TopEdges,
    MiddlesDown, ///< side by side
    BottomEdges,
    GapsAcross,
    GapsDown
};

inline constexpr std::array kArrangements{
    Arrangement::LeftEdges,   Arrangement::MiddlesAcross, Arrangement::RightEdges, Arrangement::TopEdges,
    Arrangement::MiddlesDown, Arrangement::BottomEdges,   Arrangement::GapsAcross, Arrangement::GapsDown};

/// Edges and middles need two parts, gaps three.
bool canArrange(const SelectedObjects& objects, Arrangement how);

/// Moves the selected parts so that the edges or middles of their symbols are in line, or the gaps between
/// them equal; the outermost part that gives the line, or the first of a row, stays. All stay on the grid: of
/// an odd and an even width the middles are half a step apart. Changes nothing where canArrange() is false.
Edit arranging(const Circuit& circuit, const SelectedObjects& objects, Arrangement how);

} // namespace pumpwright
