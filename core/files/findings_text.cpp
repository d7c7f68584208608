#include "core/files/findings_text.h"

#include "core/files/circuit_file.h"
#include "core/files/json_text.h"
#include "core/sheet/references.h"
#include "core/units/visible_text.h"

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
        list.push_back({{"text", remedy.text.english()}, {"byProgram", remedy.edit.has_value()}});
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
              {"what", finding.what.english()},
              {"value", finding.value},
              {"limit", finding.limit},
              {"unit", siUnit(finding.kind)},
              {"source", finding.source},
              {"why", finding.why.english()},
              {"remedies", remediesJson(finding)}};
    json["at_s"] = finding.at_s ? Json(*finding.at_s) : Json(nullptr);
    json["waiver"] = finding.waiver
                         ? Json{{"reason", finding.waiver->reason}, {"initials", finding.waiver->initials}}
                         : Json(nullptr);
    return json;
}

std::string listItem(std::string_view label, std::string_view text) {
    return text.empty() ? std::string() : fmt::format("- **{}:** {}\n", label, markdownText(text));
}

std::string findingMarkdown(const Circuit& circuit, const Finding& finding) {
    std::string text =
        fmt::format("## {}: {}\n\n", signalWordName(finding.word), markdownText(finding.title));
    text += listItem("About", subjectReferences(circuit, finding));
    text += listItem("Found", finding.what.english());
    text += listItem("Why it matters", finding.why.english());
    for (const Remedy& remedy : finding.remedies) {
        text += listItem("Remedy", remedy.text.english());
    }
    text += listItem("Limit from", finding.source);
    if (finding.waiver) {
        text +=
            listItem("Accepted", fmt::format("{} ({})", finding.waiver->reason, finding.waiver->initials));
    }
    return text + "\n";
}

std::string headMarkdown(const FindingsReport& report) {
    const std::string& title = report.circuit.title.title;
    std::string text = fmt::format("# Findings{}\n\n", title.empty() ? "" : ": " + markdownText(title));
    text += listItem("File", report.file);
    text += listItem("Check sum", circuitCheckSum(report.circuit));
    text +=
        listItem("Drive", report.drive.status == DriveStatus::Finished ? "simulated to its end"
                                                                       : "stopped: " + report.drive.message);
    for (const SignalWord word : kWords) {
        text += fmt::format("- **Open, {}:** {}\n", signalWordName(word), openCount(report.findings, word));
    }
    return text + "\n";
}

} // namespace

std::ptrdiff_t openCount(const std::vector<Finding>& findings, SignalWord word) {
    return std::ranges::count_if(
        findings, [&](const Finding& finding) { return finding.word == word && !finding.waiver; });
}

std::string findingsJson(const FindingsReport& report) {
    Json json{{"file", report.file}, {"checkSum", circuitCheckSum(report.circuit)}};
    json["driveFinished"] = report.drive.status == DriveStatus::Finished;
    json["driveMessage"] = report.drive.message;
    Json counts = Json::object();
    for (const SignalWord word : kWords) {
        counts[std::string(signalWordName(word))] = openCount(report.findings, word);
    }
    json["open"] = counts;
    json["findings"] = Json::array();
    for (const Finding& finding : report.findings) {
        json["findings"].push_back(findingJson(report.circuit, finding));
    }
    return jsonText(json);
}

std::string findingsMarkdown(const FindingsReport& report) {
    std::string text = headMarkdown(report);
    for (const bool waived : {false, true}) {
        for (const Finding& finding : report.findings) {
            text += finding.waiver.has_value() == waived ? findingMarkdown(report.circuit, finding) : "";
        }
    }
    return report.findings.empty()
               ? text + "No rule found anything. That is no proof that the circuit is safe.\n"
               : text;
}

std::string markdownText(std::string_view text) {
    constexpr std::string_view kMarkup = "\\`*_{}[]<>#|~&$!^";
    std::string escaped;
    for (const char c : visibleText(text)) {
        escaped += kMarkup.find(c) == std::string_view::npos ? std::string(1, c) : std::string{'\\', c};
    }
    return escaped;
}

} // namespace pumpwright
