#include "core/checks/contact_chatter.h"

#include "core/checks/drive_reading.h"
#include "core/parts/part_kind.h"

#include <algorithm>

namespace pumpwright {
namespace {

/// Closings this near to the one before are the bounce of one contact. Common practice, no published source.
constexpr double kBounce_s = 0.01;

/// Presses and switch moves of the plan: what they close is no chatter.
double commandsIn(const DrivePlan& plan, double from_s, double to_s) {
    const auto within = [&](const auto& command) { return command.at_s >= from_s && command.at_s <= to_s; };
    return static_cast<double>(std::count_if(plan.presses.begin(), plan.presses.end(), within) +
                               std::count_if(plan.switchMoves.begin(), plan.switchMoves.end(), within));
}

} // namespace

std::vector<double> closings_s(const Channel& state) {
    std::vector<double> real;
    for (const double time_s : risings(state)) {
        if (real.empty() || time_s - real.back() >= kBounce_s) {
            real.push_back(time_s);
        }
    }
    return real;
}

ContactChatter contactChatter(const DrivePlan& plan, const Channel& state) {
    ContactChatter worst;
    const std::vector<double> times_s = closings_s(state);
    std::size_t last = 0;
    for (std::size_t first = 0; first < times_s.size(); ++first) {
        while (last < times_s.size() && times_s[last] <= times_s[first] + kChatterWindow_s) {
            ++last;
        }
        // One command more may still act in the window: the one that made its first closing.
        const double commanded =
            commandsIn(plan, times_s[first] - kChatterWindow_s, times_s[first] + kChatterWindow_s);
        const double closings = static_cast<double>(last - first) - commanded;
        if (closings > worst.closings) {
            worst = {closings, times_s[first]};
        }
    }
    return worst;
}

ContactChatter worstChatter(const Circuit& circuit, const Recording& recording) {
    ContactChatter worst;
    for (const auto& [id, part] : circuit.parts) {
        for (const Contact& contact : kindOf(part).features(part).contacts) {
            const std::string tail = contact.name.empty() ? "" : " " + contact.name;
            if (const Channel* state = recording.part(id, probe::kContact + tail)) {
                const ContactChatter one = contactChatter(circuit.plan, *state);
                worst = one.closings > worst.closings ? one : worst;
            }
        }
    }
    return worst;
}

} // namespace pumpwright
