#include "core/study/measure.h"

#include "core/checks/contact_chatter.h"
#include "core/checks/finding.h"
#include "core/checks/press_assist.h"
#include "core/units/text.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace pumpwright {
namespace {

using Sort = Measure::Sort;
using Value = std::optional<double>;

template <SignalWord word>
Value openFindings(const DriveOutcome& outcome) {
    return outcome.openFindings[static_cast<std::size_t>(word)];
}

/// Of drives with a press only.
Value withPress(const DriveOutcome& outcome, double value) {
    return outcome.numbers.presses > 0 ? Value(value) : std::nullopt;
}

Value none(const Circuit&) {
    return 0;
}
Value open(const Circuit&) {
    return std::nullopt;
}

constexpr std::array kMeasures{
    Measure{"chatter", words("Contacts chatter"), Better::Less, Sort::YesNo, QuantityKind::Number,
            [](const DriveOutcome& one) { return Value(one.numbers.chatters ? 1 : 0); }, none},
    Measure{"closings", words("Closings in 2 s, most"), Better::Neither, Sort::Count, QuantityKind::Number,
            [](const DriveOutcome& one) { return Value(one.numbers.mostClosings); }, open},
    Measure{"lacking-presses", words("Presses without full assist"), Better::Less, Sort::Count,
            QuantityKind::Number, [](const DriveOutcome& one) { return Value(one.numbers.lackingPresses); },
            none},
    Measure{"least-assist", words("Assist of the worst press, of what it asks for"), Better::More,
            Sort::Quantity, QuantityKind::Share,
            [](const DriveOutcome& one) { return withPress(one, one.numbers.leastAssistShare); },
            [](const Circuit&) { return Value(kFullAssistShare); }},
    Measure{"lowest-vacuum", words("Lowest vacuum in a press"), Better::More, Sort::Quantity,
            QuantityKind::GaugeVacuum, [](const DriveOutcome& one) { return one.numbers.lowestVacuum_Pa; },
            open},
    Measure{"reserve", words("Reserve, presses"), Better::More, Sort::Count, QuantityKind::Number,
            [](const DriveOutcome& one) { return Value(one.reservePresses); },
            [](const Circuit& circuit) { return Value(circuit.limits.reservePresses); }},
    Measure{"pump-starts", words("Pump starts"), Better::Less, Sort::Count, QuantityKind::Number,
            [](const DriveOutcome& one) { return Value(one.numbers.pumpStarts); }, open},
    Measure{"pump-runs", words("Pump runs for"), Better::Less, Sort::Quantity, QuantityKind::Time,
            [](const DriveOutcome& one) { return Value(one.numbers.pumpRunning_s); }, open},
    Measure{"dangers", words("Findings: DANGER"), Better::Less, Sort::Count, QuantityKind::Number,
            openFindings<SignalWord::Danger>, none},
    Measure{"warnings", words("WARNING"), Better::Less, Sort::Count, QuantityKind::Number,
            openFindings<SignalWord::Warning>, none},
    Measure{"cautions", words("CAUTION"), Better::Less, Sort::Count, QuantityKind::Number,
            openFindings<SignalWord::Caution>, none},
    Measure{"notices", words("NOTICE"), Better::Less, Sort::Count, QuantityKind::Number,
            openFindings<SignalWord::Notice>, none},
};

} // namespace

std::span<const Measure> measures() {
    return kMeasures;
}

const Measure* findMeasure(std::string_view id) {
    const auto found = std::ranges::find(kMeasures, id, &Measure::id);
    return found == kMeasures.end() ? nullptr : &*found;
}

std::string measureText(const Measure& measure, std::optional<double> value) {
    if (!value) {
        return "–";
    }
    switch (measure.sort) {
    case Sort::YesNo:
        return *value > 0 ? words("yes") : words("no");
    case Sort::Count:
        return fmt::format("{:.0f}", *value);
    case Sort::Quantity:
        break;
    }
    return formatQuantity(*value, measure.kind);
}

bool isGood(const Measure& measure, std::optional<double> value, double goal) {
    return value && (measure.better == Better::More ? *value >= goal : *value <= goal);
}

} // namespace pumpwright
