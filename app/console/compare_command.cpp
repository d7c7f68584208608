#include "app/console/checked_circuit.h"
#include "app/console/commands.h"
#include "app/console/error_text.h"
#include "app/console/text_table.h"
#include "core/files/circuit_file.h"
#include "core/files/json_text.h"
#include "core/sheet/comparison.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

Json differencesJson(const std::vector<Difference>& differences) {
    Json list = Json::array();
    for (const Difference& one : differences) {
        list.push_back({{"change", changeSortName(one.sort)},
                        {"about", one.about},
                        {"value", one.value},
                        {"before", one.before},
                        {"after", one.after}});
    }
    return list;
}

std::string comparisonJson(const Request& request, const CheckedCircuit& before, const CheckedCircuit& after,
                           const Comparison& comparison) {
    Json json{{"file", request.file},
              {"checkSum", circuitCheckSum(before.circuit)},
              {"otherFile", request.otherFile},
              {"otherCheckSum", circuitCheckSum(after.circuit)}};
    json["circuit"] = differencesJson(comparison.circuit);
    json["findings"] = differencesJson(comparison.findings);
    json["movedParts"] = comparison.moved;
    return jsonText(json);
}

std::string comparisonText(const Comparison& comparison) {
    std::string text =
        comparison.circuit.empty() ? "The circuits say the same.\n" : textTable(differenceTable(comparison));
    text += "\n";
    text += comparison.findings.empty() ? "The findings are the same.\n"
                                        : textTable(findingDifferenceTable(comparison));
    if (comparison.moved > 0) {
        text += fmt::format("\nParts that only stand elsewhere on the drawing: {}.\n", comparison.moved);
    }
    return text;
}

} // namespace

Outcome compareCommand(const Request& request) {
    Result<Circuit> first = readCircuit(request.file);
    if (!first) {
        return unreadable(first.error());
    }
    Result<Circuit> second = readCircuit(request.otherFile);
    if (!second) {
        return unreadable(second.error());
    }
    const CheckedCircuit before = checkedCircuit(std::move(*first));
    const CheckedCircuit after = checkedCircuit(std::move(*second));
    const Comparison comparison =
        comparisonOf({before.circuit, before.findings}, {after.circuit, after.findings});
    const bool same = comparison.circuit.empty() && comparison.findings.empty();
    return {same ? ExitStatus::Fine : ExitStatus::Findings,
            request.form == OutputForm::Json ? comparisonJson(request, before, after, comparison)
                                             : comparisonText(comparison),
            ""};
}

} // namespace pumpwright
