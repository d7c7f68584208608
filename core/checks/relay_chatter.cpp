#include "core/checks/carried_current.h"
#include "core/checks/contact_chatter.h"
#include "core/checks/remedy_edit.h"
#include "core/checks/set_point.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace pumpwright {
namespace {

/// What a timer adds after the switch has opened cures chatter from about this on. Common practice, no
/// published source.
constexpr double kRunOn_s = 5;

struct Chatter {
    PartId part;
    ContactChatter worst;
};

/// Everything that chatters, worst first; together they are one fault.
std::vector<Chatter> chatterOf(const Survey& survey) {
    std::vector<Chatter> all;
    for (const Branch& branch : survey.branches()) {
        if (branch.sort == BranchSort::Contact) {
            const Channel* state = contactChannel(survey, branch, probe::kContact);
            const ContactChatter worst =
                state == nullptr ? ContactChatter{} : contactChatter(survey.circuit().plan, *state);
            if (worst.chatters()) {
                all.push_back({branch.part, worst});
            }
        }
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const Chatter& a, const Chatter& b) { return a.worst.closings > b.worst.closings; });
    return all;
}

std::vector<Remedy> remedies(const Survey& survey, const std::vector<Chatter>& all) {
    std::vector<Remedy> remedies;
    for (const Chatter& chatter : all) {
        if (const auto remedy = widerDifferential(survey, chatter.part)) {
            remedies.push_back(*remedy);
        }
    }
    for (const auto& [id, part] : survey.circuit().parts) {
        const auto delay_s = nameplateValue(part, "delay_s");
        if (delay_s && *delay_s < kRunOn_s) {
            const Text text =
                say("{} to {}", nameOf(survey.circuit(), id), amount(kRunOn_s, QuantityKind::Time));
            remedies.push_back(
                {say("Set the delay of {}.", text),
                 valueEdit(survey.circuit(), id, "delay_s", kRunOn_s, say("Set the delay of {}", text))});
        }
    }
    remedies.push_back(
        {say("Let a timer with delay on release hold the pump for about five seconds after the vacuum "
             "switch has opened."),
         {}});
    return remedies;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    const std::vector<Chatter> all = chatterOf(survey);
    if (all.empty()) {
        return {};
    }
    Finding finding = newFinding(rule);
    std::set<PartId> parts;
    std::vector<Text> counts;
    for (const Chatter& chatter : all) {
        if (parts.insert(chatter.part).second) {
            counts.push_back(
                say("{} {} times", nameOf(survey.circuit(), chatter.part), whole(chatter.worst.closings)));
        }
    }
    finding.parts.assign(parts.begin(), parts.end());
    finding.value = all.front().worst.closings;
    finding.limit = kAllowedClosings;
    finding.at_s = all.front().worst.at_s;
    finding.what =
        say("Contacts chatter: within {} from {} on close {}.", amount(kChatterWindow_s, QuantityKind::Time),
            amount(all.front().worst.at_s, QuantityKind::Time), listOf(counts));
    finding.why = say("Each closing takes the pump's inrush: the contact welds or burns out within weeks.");
    finding.remedies = remedies(survey, all);
    return {finding};
}

} // namespace

extern const Rule kRelayChatter{"relay-chatter",
                                words("Relay chatter"),
                                SignalWord::Warning,
                                words("common practice, no published source"),
                                true,
                                check};

} // namespace pumpwright
