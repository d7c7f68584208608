#include "core/sheet/fit_tables.h"

#include "core/sheet/cells.h"

#include <fmt/format.h>

#include <cmath>

namespace pumpwright {
namespace {

SheetTable valueTable(const FitResult& result) {
    SheetTable table{
        words("Fitted values"),
        {words("Value"), words("Before"), words("Fitted"), words("Standard error"), words("of the value")},
        {false, true, true, true, true},
        {}};
    for (const FittedValue& value : result.values) {
        const QuantityKind kind = value.what.spec->kind;
        const auto& error = value.standardError;
        const bool hasShare = error && value.value != 0;
        table.rows.push_back({value.what.label, formatQuantity(value.before, kind),
                              formatQuantity(value.value, kind),
                              error ? formatQuantity(*error, kind) : std::string(kNothing),
                              hasShare ? fmt::format("{:.1f} %", 100 * *error / std::abs(value.value))
                                       : std::string(kNothing)});
    }
    return table;
}

SheetTable matchTable(const FitResult& result) {
    SheetTable table{words("Between log and simulation, root mean square"),
                     {words("Trace"), words("Readings"), words("Before"), words("Fitted")},
                     {false, true, true, true},
                     {}};
    for (const TraceMatch& match : result.traces) {
        table.rows.push_back({match.name, fmt::format("{}", match.readings),
                              formatQuantity(match.before, match.kind),
                              formatQuantity(match.after, match.kind)});
    }
    return table;
}

} // namespace

std::vector<SheetTable> fitTables(const FitResult& result) {
    std::vector<SheetTable> tables;
    tables.push_back(valueTable(result));
    tables.push_back(matchTable(result));
    return tables;
}

std::vector<Text> fitWarnings(const FitResult& result) {
    std::vector<Text> warnings;
    for (const TraceMatch& match : result.traces) {
        if (match.isMissed()) {
            warnings.push_back(
                say("The simulation does not meet {}: {} are left between them. Do not trust these "
                    "values, whatever their errors: log a stretch in which nothing switches, start "
                    "from nearer values, or fit others.",
                    match.name, formatQuantity(match.after, match.kind)));
        }
    }
    for (const Tangle& tangle : result.tangles) {
        warnings.push_back(
            say("The log cannot tell {} and {} apart: one makes up for the other (correlation {}). "
                "Fit one of them, or log something else as well.",
                result.values[tangle.one].what.label, result.values[tangle.other].what.label,
                fmt::format("{:+.3f}", tangle.correlation)));
    }
    for (const FittedValue& value : result.values) {
        if (value.isAtLimit) {
            warnings.push_back(
                say("{} ended at the limit of what it may be: do not trust it.", value.what.label));
        } else if (!value.standardError) {
            warnings.push_back(say("The log says nothing about {}: it stays as it was.", value.what.label));
        }
    }
    if (result.status == FitResult::Status::NotSettled) {
        warnings.push_back(
            say("The search had not settled when its rounds were used up: start from nearer values."));
    }
    return warnings;
}

} // namespace pumpwright
