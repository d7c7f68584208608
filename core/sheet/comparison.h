#pragma once

#include "core/checks/finding.h"
#include "core/circuit/circuit.h"
#include "core/sheet/wiring_sheet.h"

#include <string>
#include <vector>

namespace pumpwright {

enum class ChangeSort { Added, Removed, Changed };

std::string_view changeSortName(ChangeSort sort); ///< "added"

/// One thing that two circuits say differently.
struct Difference {
    ChangeSort sort = ChangeSort::Changed;
    std::string about;  ///< "K1 relay", "W3", "Drive plan"
    std::string value;  ///< which value of it: "Rating"; empty for all of it
    std::string before; ///< empty where there was nothing
    std::string after;
};

/// A circuit with its findings.
struct Judged {
    const Circuit& circuit;
    const std::vector<Finding>& findings;
};

struct Comparison {
    std::vector<Difference> circuit;
    std::vector<Difference> findings; ///< `about` is "WARNING: Voltage drop too high (W3)"
    int moved = 0;                    ///< parts that only stand elsewhere on the drawing
};

/// Things are the same where they have the same reference, and else where they have the same id: a part that
/// was only renamed is changed, not taken away and added.
Comparison comparisonOf(const Judged& before, const Judged& after);

SheetTable differenceTable(const Comparison& comparison);
SheetTable findingDifferenceTable(const Comparison& comparison);

} // namespace pumpwright
