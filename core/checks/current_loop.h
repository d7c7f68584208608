#pragma once

#include "core/checks/branch.h"

#include <vector>

namespace pumpwright {

class Survey;

/// Whether current from a source can flow through a branch and back to the source.
enum class LoopState {
    Loop,    ///< it can, in some state of the contacts
    Blocked, ///< conductors close the loop, but a diode, semiconductor or capacitor bars the current
    None
};

/// The state of every branch. A source that feeds nothing is in no loop itself.
std::vector<LoopState> loopStates(const Survey& survey);

/// Which nets lie on a way from a source's plus and which on a way to its minus.
struct SourceReach {
    std::size_t plus = 0;
    std::size_t minus = 0;
    std::vector<bool> fromPlus;
    std::vector<bool> toMinus;

    /// Whether the source drives current from one net to the other.
    bool flows(std::size_t from, std::size_t to) const {
        return from != minus && to != plus && fromPlus[from] && toMinus[to];
    }
};

/// For each source, over conductors and contacts.
std::vector<SourceReach> sourceReaches(const Survey& survey);

/// Which of two nets is on the plus side when a source feeds what lies between them.
enum class PlusSide { First, Second, Either, None };

/// Asked for a coil or load between two nets; what lies in parallel to it does not count as feeding it. Ways
/// over conductors and contacts decide; ways through other loads only where there are no such ways.
PlusSide plusSide(const Survey& survey, std::size_t first, std::size_t second);

/// Whether a coil or motor lies between the same two nets as this branch.
bool liesAcrossWinding(const Survey& survey, const Branch& branch);

/// Whether this branch is a winding: a coil, or a motor as a load.
bool isWinding(const Survey& survey, const Branch& branch);

} // namespace pumpwright
