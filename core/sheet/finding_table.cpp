#include "core/sheet/cells.h"
#include "core/sheet/references.h"
#include "core/sheet/tables_p.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

std::string subjectsText(const Circuit& circuit, const Finding& finding) {
    const std::string references = subjectReferences(circuit, finding);
    return references.empty() ? kNothing : references;
}

std::string stateText(const Finding& finding) {
    if (!finding.waiver) {
        return "open";
    }
    const std::string by = finding.waiver->initials.empty() ? "" : " (" + finding.waiver->initials + ")";
    return fmt::format("accepted: {}{}", finding.waiver->reason, by);
}

std::string remedyText(const Finding& finding) {
    return finding.remedies.empty() ? kNothing : finding.remedies.front().text.english();
}

} // namespace

SheetTable findingTable(const Circuit& circuit, const std::vector<Finding>& findings) {
    SheetTable table{"Findings",
                     {"Signal word", "About", "What was found", "Limit from", "Remedy", "State"},
                     std::vector<bool>(6, false),
                     {}};
    for (const bool waived : {false, true}) {
        for (const Finding& finding : findings) {
            if (finding.waiver.has_value() == waived) {
                table.rows.push_back({std::string(signalWordName(finding.word)),
                                      subjectsText(circuit, finding), finding.what.english(), finding.source,
                                      remedyText(finding), stateText(finding)});
            }
        }
    }
    return table;
}

} // namespace pumpwright
