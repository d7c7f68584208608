#include "core/checks/press_assist.h"

#include <algorithm>

namespace pumpwright {
namespace {

constexpr double kLeastAsked_N = 100; ///< a press that asks for less does without

/// [s] after the force has come to rest; the booster's valve and diaphragm need that long. Common practice,
/// no published source.
constexpr double kResponse_s = 0.2;
/// [s] A lack of assist for as long as this is felt. Common practice, no published source.
constexpr double kFelt_s = 0.25;

PressAssist worstStretch(const Press& press, const Channel& asked, const Channel& given) {
    const double release_s = press.at_s + std::max(press.hold_s, press.rise_s);
    const double steady_s = std::min(press.at_s + press.rise_s + kResponse_s, release_s);
    const int stretches = std::max(1, static_cast<int>((release_s - steady_s) / kFelt_s));
    const double length_s = (release_s - steady_s) / stretches;
    PressAssist worst;
    for (int i = 0; i < stretches; ++i) {
        const double from_s = steady_s + i * length_s;
        const PressAssist stretch{press.at_s, asked.mean(from_s, from_s + length_s),
                                  given.mean(from_s, from_s + length_s)};
        if (i == 0 || stretch.share() < worst.share()) {
            worst = stretch;
        }
    }
    return worst;
}

} // namespace

double PressAssist::share() const {
    return asked_N < kLeastAsked_N ? 1 : given_N / asked_N;
}

std::vector<PressAssist> pressAssists(const DrivePlan& plan, const Recording& recording,
                                      const PartId& booster) {
    std::vector<PressAssist> presses;
    const Channel* asked = recording.part(booster, probe::kAssistAsked);
    const Channel* given = recording.part(booster, probe::kAssist);
    if (asked == nullptr || given == nullptr) {
        return presses;
    }
    for (const Press& press : plan.presses) {
        if (press.at_s + std::max(press.hold_s, press.rise_s) <= recording.duration_s) {
            presses.push_back(worstStretch(press, *asked, *given));
        }
    }
    return presses;
}

} // namespace pumpwright
