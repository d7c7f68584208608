#include "app/console/checked_circuit.h"
#include "app/console/commands.h"
#include "app/console/error_text.h"
#include "app/console/text_table.h"
#include "core/files/circuit_file.h"
#include "core/files/findings_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace pumpwright {
namespace {

constexpr std::array kWords{SignalWord::Danger, SignalWord::Warning, SignalWord::Caution, SignalWord::Notice};

void appendLine(std::string& text, std::string_view label, std::string_view words) {
    constexpr std::string_view kIndent = "                   ";
    const std::string line = fmt::format("  {:<17}{}", label, words);
    text += wrapped(line, kTextWidth, kIndent) + "\n";
}

std::string findingText(const Finding& finding) {
    const std::string heading = fmt::format("{:<8} {}", signalWordName(finding.word), finding.title);
    std::string text = wrapped(heading, kTextWidth, "         ") + "\n";
    appendLine(text, "Found:", finding.what.english());
    if (!finding.why.isEmpty()) {
        appendLine(text, "Why it matters:", finding.why.english());
    }
    for (const Remedy& remedy : finding.remedies) {
        appendLine(text, "Remedy:", remedy.text.english());
    }
    appendLine(text, "Limit from:", finding.source);
    if (finding.waiver) {
        appendLine(text,
                   "Accepted:", fmt::format("{} ({})", finding.waiver->reason, finding.waiver->initials));
    }
    return text + "\n";
}

std::string closingText(const CheckedCircuit& checked) {
    std::vector<std::string> counts;
    for (const SignalWord word : kWords) {
        counts.push_back(fmt::format("{} {}", openCount(checked.findings, word), signalWordName(word)));
    }
    const auto waived = std::ranges::count_if(
        checked.findings, [](const Finding& finding) { return finding.waiver.has_value(); });
    return fmt::format("Open: {}. Accepted: {}.\n", fmt::join(counts, ", "), waived);
}

std::string findingsText(const CheckedCircuit& checked) {
    std::string text;
    for (const Finding& finding : checked.findings) {
        text += findingText(finding);
    }
    if (checked.findings.empty()) {
        text = "No rule found anything. That is no proof that the circuit is safe.\n\n";
    }
    return text + closingText(checked);
}

std::string outputOf(OutputForm form, const CheckedCircuit& checked, const FindingsReport& report) {
    return form == OutputForm::Json       ? findingsJson(report)
           : form == OutputForm::Markdown ? findingsMarkdown(report)
                                          : findingsText(checked);
}

bool reaches(const std::vector<Finding>& findings, SignalWord mildest) {
    return std::ranges::any_of(
        findings, [&](const Finding& finding) { return !finding.waiver && finding.word <= mildest; });
}

} // namespace

Outcome checkCommand(const Request& request) {
    Result<Circuit> circuit = readCircuit(request.file);
    if (!circuit) {
        return unreadable(circuit.error());
    }
    const CheckedCircuit checked = checkedCircuit(std::move(*circuit));
    const FindingsReport report{request.file, checked.circuit, *checked.drive, checked.findings};
    const std::string complaint = driveComplaint(*checked.drive);
    const bool counts = reaches(checked.findings, request.atLeast) || !complaint.empty();
    return {counts ? ExitStatus::Findings : ExitStatus::Fine, outputOf(request.form, checked, report),
            complaint.empty() ? "" : fmt::format("pumpwright: {}\n", complaint)};
}

} // namespace pumpwright
