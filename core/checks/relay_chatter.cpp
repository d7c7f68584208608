#include "core/checks/carried_current.h"
#include "core/checks/drive_reading.h"
#include "core/checks/remedy_edit.h"
#include "core/checks/set_point.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace pumpwright {
namespace {

// Two closings within two seconds are a restart; three are chatter. Common practice, no published source.
constexpr double kWindow_s = 2;
constexpr double kAllowedClosings = 2;
/// Closings this near to the one before are the bounce of one contact. Common practice, no published source.
constexpr double kBounce_s = 0.01;
/// What a timer adds after the switch has opened cures chatter from about this on. Common practice, no
/// published source.
constexpr double kRunOn_s = 5;

/// The contact that closes most often within the window.
struct Chatter {
    PartId part;
    double closings = 0; ///< within the window, without those that the drive plan commands
    double at_s = 0;
};

std::vector<double> withoutBounce(const std::vector<double>& closings_s) {
    std::vector<double> real;
    for (const double time_s : closings_s) {
        if (real.empty() || time_s - real.back() >= kBounce_s) {
            real.push_back(time_s);
        }
    }
    return real;
}

/// Presses and switch moves of the plan: what they close is no chatter.
double commandsIn(const DrivePlan& plan, double from_s, double to_s) {
    const auto within = [&](const auto& command) { return command.at_s >= from_s && command.at_s <= to_s; };
    return static_cast<double>(std::count_if(plan.presses.begin(), plan.presses.end(), within) +
                               std::count_if(plan.switchMoves.begin(), plan.switchMoves.end(), within));
}

Chatter worstWindow(const Survey& survey, const Branch& contact) {
    Chatter worst{contact.part, 0, 0};
    const Channel* state = contactChannel(survey, contact, probe::kContact);
    if (state == nullptr) {
        return worst;
    }
    const std::vector<double> closings_s = withoutBounce(risings(*state));
    std::size_t last = 0;
    for (std::size_t first = 0; first < closings_s.size(); ++first) {
        while (last < closings_s.size() && closings_s[last] <= closings_s[first] + kWindow_s) {
            ++last;
        }
        // One command more may still act in the window: the one that made its first closing.
        const double commanded =
            commandsIn(survey.circuit().plan, closings_s[first] - kWindow_s, closings_s[first] + kWindow_s);
        const double closings = static_cast<double>(last - first) - commanded;
        if (closings > worst.closings) {
            worst = {contact.part, closings, closings_s[first]};
        }
    }
    return worst;
}

/// Everything that chatters, worst first; together they are one fault.
std::vector<Chatter> chatterOf(const Survey& survey) {
    std::vector<Chatter> all;
    for (const Branch& branch : survey.branches()) {
        if (branch.sort == BranchSort::Contact) {
            const Chatter chatter = worstWindow(survey, branch);
            if (chatter.closings > kAllowedClosings) {
                all.push_back(chatter);
            }
        }
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const Chatter& a, const Chatter& b) { return a.closings > b.closings; });
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
            const std::string text =
                fmt::format("{} to {}", nameOf(survey.circuit(), id), amount(kRunOn_s, QuantityKind::Time));
            remedies.push_back(
                {"Set the delay of " + text + ".",
                 valueEdit(survey.circuit(), id, "delay_s", kRunOn_s, "Set the delay of " + text)});
        }
    }
    remedies.push_back(
        {"Let a timer with delay on release hold the pump for about five seconds after the vacuum "
         "switch has opened.",
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
    std::vector<std::string> counts;
    for (const Chatter& chatter : all) {
        if (parts.insert(chatter.part).second) {
            counts.push_back(
                fmt::format("{} {:.0f} times", nameOf(survey.circuit(), chatter.part), chatter.closings));
        }
    }
    finding.parts.assign(parts.begin(), parts.end());
    finding.value = all.front().closings;
    finding.limit = kAllowedClosings;
    finding.at_s = all.front().at_s;
    finding.what =
        fmt::format("Contacts chatter: within {} from {} on close {}.", amount(kWindow_s, QuantityKind::Time),
                    amount(all.front().at_s, QuantityKind::Time), listOf(counts));
    finding.why = "Each closing takes the pump's inrush: the contact welds or burns out within weeks.";
    finding.remedies = remedies(survey, all);
    return {finding};
}

} // namespace

extern const Rule kRelayChatter{"relay-chatter",
                                "Relay chatter",
                                SignalWord::Warning,
                                "common practice, no published source",
                                true,
                                check};

} // namespace pumpwright
