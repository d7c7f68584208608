#pragma once

#include "core/sheet/wiring_sheet.h"
#include "core/study/trials.h"

namespace pumpwright {

/// "Base" for the circuit as it is drawn, then "1", "2" …
std::string trialColumn(std::size_t index);

/// What each column stands for: name, and the parts that the trial adds.
SheetTable trialIdeas(const std::vector<TrialOutcome>& outcomes);

/// A row for each result and a column for each trial, then in words which of them are best and worst.
/// `prices` as for billOf().
SheetTable trialResults(const std::vector<TrialOutcome>& outcomes, const PriceList& prices = {});

} // namespace pumpwright
