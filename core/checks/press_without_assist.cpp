#include "core/checks/set_point.h"
#include "core/checks/survey.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace pumpwright {
namespace {

// Shares of the assist that the pedal force asks for. Common practice, no published source.
constexpr double kFullShare = 0.95;   ///< less than this is felt
constexpr double kDangerShare = 0.5;  ///< with less, the pedal takes about twice the force or more
constexpr double kLeastAsked_N = 100; ///< a press that asks for less does without

/// [s] after the force has come to rest; the booster's valve and diaphragm need that long. Common practice,
/// no published source.
constexpr double kResponse_s = 0.2;
/// [s] A lack of assist for as long as this is felt. Common practice, no published source.
constexpr double kFelt_s = 0.25;

/// A stretch of a press in which its force stays the same.
struct Judged {
    double asked_N = 0;
    double given_N = 0;
    double at_s = 0;
    double share() const { return asked_N < kLeastAsked_N ? 1 : given_N / asked_N; }
};

/// The worst stretch of a press: the foot comes down when it needs the assist, not some seconds later.
Judged judge(const Press& press, const Channel& asked, const Channel& given) {
    const double release_s = press.at_s + std::max(press.hold_s, press.rise_s);
    const double steady_s = std::min(press.at_s + press.rise_s + kResponse_s, release_s);
    const int stretches = std::max(1, static_cast<int>((release_s - steady_s) / kFelt_s));
    const double length_s = (release_s - steady_s) / stretches;
    Judged worst;
    for (int i = 0; i < stretches; ++i) {
        const double from_s = steady_s + i * length_s;
        const Judged judged{asked.mean(from_s, from_s + length_s), given.mean(from_s, from_s + length_s),
                            press.at_s};
        if (i == 0 || judged.share() < worst.share()) {
            worst = judged;
        }
    }
    return worst;
}

struct Presses {
    int count = 0;
    int lacking = 0;
    Judged worst;
};

Presses judgeAll(const Survey& survey, const PartId& booster) {
    Presses presses;
    const Recording& recording = *survey.recording();
    const Channel* asked = recording.part(booster, probe::kAssistAsked);
    const Channel* given = recording.part(booster, probe::kAssist);
    if (asked == nullptr || given == nullptr) {
        return presses;
    }
    for (const Press& press : survey.circuit().plan.presses) {
        if (press.at_s + std::max(press.hold_s, press.rise_s) > recording.duration_s) {
            continue; // the run ended before
        }
        const Judged judged = judge(press, *asked, *given);
        ++presses.count;
        if (judged.share() < kFullShare) {
            presses.worst =
                presses.lacking == 0 || judged.share() < presses.worst.share() ? judged : presses.worst;
            ++presses.lacking;
        }
    }
    return presses;
}

std::vector<Remedy> remedies() {
    return {
        {"Let a vacuum switch start the pump, so that the vacuum is there before the first press.", {}},
        {"Raise the set point of the vacuum switch, or fit a larger reservoir or pump.", {}},
        {"Warn the driver of low vacuum with a lamp and a buzzer on a switch and fuse of their own.", {}}};
}

Finding findingFor(const Rule& rule, const Survey& survey, const PartId& booster, const Presses& presses) {
    const Judged& worst = presses.worst;
    Finding finding = newFinding(rule);
    finding.word = worst.share() < kDangerShare ? SignalWord::Danger : SignalWord::Warning;
    finding.parts = {booster};
    finding.value = std::max(0.0, worst.share());
    finding.limit = kFullShare;
    finding.kind = QuantityKind::Share;
    finding.at_s = worst.at_s;
    finding.what =
        fmt::format("{} of {} press{} of the drive {} full assist from {}; the worst, at {}, gets {} of the "
                    "{} that it asks for ({}).",
                    presses.lacking, presses.count, presses.count == 1 ? "" : "es",
                    presses.lacking == 1 ? "lacks" : "lack", nameOf(survey.circuit(), booster),
                    amount(worst.at_s, QuantityKind::Time), amount(worst.given_N, QuantityKind::Force),
                    amount(worst.asked_N, QuantityKind::Force), amount(finding.value, finding.kind));
    finding.why = "Without assist the pedal needs several times the force, and the vehicle stops later.";
    finding.remedies = remedies();
    return finding;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    if (survey.recording() == nullptr) {
        return findings;
    }
    for (const auto& [id, part] : survey.circuit().parts) {
        const Presses presses = judgeAll(survey, id);
        if (presses.lacking > 0) {
            findings.push_back(findingFor(rule, survey, id, presses));
        }
    }
    return findings;
}

} // namespace

extern const Rule kPressWithoutAssist{"press-without-assist",
                                      "Press without assist",
                                      SignalWord::Danger,
                                      "common practice, no published source",
                                      true,
                                      check};

} // namespace pumpwright
