#include "app/console/checked_circuit.h"
#include "app/console/commands.h"
#include "app/console/error_text.h"
#include "app/console/json_text.h"
#include "app/console/text_table.h"
#include "core/files/circuit_file.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace pumpwright {
namespace {

constexpr std::array kWords{SignalWord::Danger, SignalWord::Warning, SignalWord::Caution, SignalWord::Notice};

template <class IdType, class Object>
Json subjectsJson(const std::vector<IdType>& ids, const std::map<IdType, Object>& objects) {
    Json list = Json::array();
    for (const IdType& id : ids) {
        const auto found = objects.find(id);
        list.push_back(
            {{"id", id.text}, {"reference", found == objects.end() ? id.text : found->second.reference}});
    }
    return list;
}

Json remediesJson(const Finding& finding) {
    Json list = Json::array();
    for (const Remedy& remedy : finding.remedies) {
        list.push_back({{"text", remedy.text}, {"byProgram", remedy.edit.has_value()}});
    }
    return list;
}

Json findingJson(const Circuit& circuit, const Finding& finding) {
    Json json{{"rule", finding.rule},
              {"signalWord", signalWordName(finding.word)},
              {"title", finding.title},
              {"parts", subjectsJson(finding.parts, circuit.parts)},
              {"wires", subjectsJson(finding.wires, circuit.wires)},
              {"hoses", subjectsJson(finding.hoses, circuit.hoses)},
              {"what", finding.what},
              {"value", finding.value},
              {"limit", finding.limit},
              {"unit", siUnit(finding.kind)},
              {"source", finding.source},
              {"why", finding.why},
              {"remedies", remediesJson(finding)}};
    json["at_s"] = finding.at_s ? Json(*finding.at_s) : Json(nullptr);
    json["waiver"] = finding.waiver
                         ? Json{{"reason", finding.waiver->reason}, {"initials", finding.waiver->initials}}
                         : Json(nullptr);
    return json;
}

/// Findings with this signal word that nobody accepted.
std::ptrdiff_t openCount(const std::vector<Finding>& findings, SignalWord word) {
    return std::ranges::count_if(
        findings, [&](const Finding& finding) { return finding.word == word && !finding.waiver; });
}

std::string findingsJson(const Request& request, const CheckedCircuit& checked) {
    Json json{{"file", request.file}, {"checkSum", circuitCheckSum(checked.circuit)}};
    json["driveFinished"] = checked.drive->status == DriveStatus::Finished;
    json["driveMessage"] = checked.drive->message;
    Json counts = Json::object();
    for (const SignalWord word : kWords) {
        counts[std::string(signalWordName(word))] = openCount(checked.findings, word);
    }
    json["open"] = counts;
    json["findings"] = Json::array();
    for (const Finding& finding : checked.findings) {
        json["findings"].push_back(findingJson(checked.circuit, finding));
    }
    return jsonText(json);
}

void appendLine(std::string& text, std::string_view label, std::string_view words) {
    constexpr std::string_view kIndent = "                   ";
    const std::string line = fmt::format("  {:<17}{}", label, words);
    text += wrapped(line, kTextWidth, kIndent) + "\n";
}

std::string findingText(const Finding& finding) {
    const std::string heading = fmt::format("{:<8} {}", signalWordName(finding.word), finding.title);
    std::string text = wrapped(heading, kTextWidth, "         ") + "\n";
    appendLine(text, "Found:", finding.what);
    if (!finding.why.empty()) {
        appendLine(text, "Why it matters:", finding.why);
    }
    for (const Remedy& remedy : finding.remedies) {
        appendLine(text, "Remedy:", remedy.text);
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
    const std::string complaint = driveComplaint(*checked.drive);
    const bool counts = reaches(checked.findings, request.atLeast) || !complaint.empty();
    return {counts ? ExitStatus::Findings : ExitStatus::Fine,
            request.form == OutputForm::Json ? findingsJson(request, checked) : findingsText(checked),
            complaint.empty() ? "" : fmt::format("pumpwright: {}\n", complaint)};
}

} // namespace pumpwright
