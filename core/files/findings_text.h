#pragma once

#include "core/checks/finding.h"
#include "core/simulate/drive.h"

#include <string>
#include <string_view>
#include <vector>

namespace pumpwright {

/// What a circuit's check came to, for files.
struct FindingsReport {
    std::string file; ///< name or path, as it is to be printed
    const Circuit& circuit;
    const DriveResult& drive;
    const std::vector<Finding>& findings;
};

/// As docs/console-json.md describes it.
std::string findingsJson(const FindingsReport& report);

/// A page to read: CommonMark, open findings first, each with a heading.
std::string findingsMarkdown(const FindingsReport& report);

/// Findings with this signal word that nobody accepted.
std::ptrdiff_t openCount(const std::vector<Finding>& findings, SignalWord word);

/// A text that Markdown shows as it is: every character that could be markup inside a line after a backslash
/// (CommonMark 0.30, section 2.4); control characters as visibleText() shows them.
std::string markdownText(std::string_view text);

} // namespace pumpwright
