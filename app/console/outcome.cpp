#include "app/console/outcome.h"

#include "core/units/visible_text.h"

namespace pumpwright {
namespace {

std::string visibleLines(std::string_view text) {
    std::string visible;
    while (!text.empty()) {
        const std::size_t end = text.find('\n');
        visible += visibleText(text.substr(0, end)) + (end == std::string_view::npos ? "" : "\n");
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    }
    return visible;
}

} // namespace

Outcome fitForTerminal(Outcome outcome, OutputForm form) {
    if (form == OutputForm::People) {
        outcome.out = visibleLines(outcome.out);
    }
    outcome.err = visibleLines(outcome.err);
    return outcome;
}

} // namespace pumpwright
