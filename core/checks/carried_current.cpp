#include "core/checks/carried_current.h"

#include "core/checks/drive_reading.h"
#include "core/checks/wording.h"

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

/// A motor's inrush has its peak well within this time after the contact closes; a filament's too.
/// Common practice, no published source.
constexpr double kMaking_s = 0.1;
/// Stray capacitance of wires and windings is charged in less; what flows for this long can melt metal.
/// Common practice, no published source.
constexpr double kMelting_s = 50e-6;

CarriedCurrent larger(const CarriedCurrent& drive, double nameplates_A) {
    return drive.value_A >= nameplates_A ? drive : CarriedCurrent{nameplates_A, std::nullopt};
}

CarriedCurrent sustainedIn(const Channel* channel) {
    if (channel == nullptr) {
        return {};
    }
    const Reading mean = highestMean(*channel);
    return {mean.value, mean.at_s};
}

const ExpectedCurrent& expectedOf(const Survey& survey, std::size_t branch) {
    static const ExpectedCurrent nothing;
    const auto& expected = survey.expectedCurrents().branches;
    const auto found = expected.find(branch);
    return found == expected.end() ? nothing : found->second;
}

const Channel* currentChannel(const Survey& survey, const Branch& branch) {
    if (survey.recording() == nullptr) {
        return nullptr;
    }
    if (branch.sort == BranchSort::Contact) {
        return contactChannel(survey, branch, probe::kContactCurrent);
    }
    return survey.recording()->part(branch.part, probe::kCurrent);
}

/// The largest current just before one of the times, as a mean over the same short while.
CarriedCurrent largestBefore(const Channel& current, const std::vector<double>& times_s) {
    CarriedCurrent largest;
    for (const double time_s : times_s) {
        const double value_A = std::abs(current.mean(time_s - kMelting_s, time_s));
        if (value_A > largest.value_A) {
            largest = {value_A, time_s};
        }
    }
    return largest;
}

} // namespace

const Contact& contactOf(const Survey& survey, const Branch& branch) {
    return survey.features(branch.part).contacts[branch.index];
}

const Channel* contactChannel(const Survey& survey, const Branch& branch, std::string_view probeName) {
    if (survey.recording() == nullptr) {
        return nullptr;
    }
    const std::string& tail = contactOf(survey, branch).name;
    const std::string name(probeName);
    return survey.recording()->part(branch.part, tail.empty() ? name : name + " " + tail);
}

CarriedCurrent sustainedCurrent(const Survey& survey, const WireId& wire) {
    const auto& expected = survey.expectedCurrents().wires;
    const auto found = expected.find(wire);
    const Channel* channel =
        survey.recording() == nullptr ? nullptr : survey.recording()->wire(wire, probe::kCurrent);
    return larger(sustainedIn(channel), found == expected.end() ? 0 : found->second.running_A);
}

CarriedCurrent sustainedCurrent(const Survey& survey, std::size_t branch) {
    const Channel* channel = currentChannel(survey, survey.branches()[branch]);
    return larger(sustainedIn(channel), expectedOf(survey, branch).running_A);
}

CarriedCurrent makingCurrent(const Survey& survey, std::size_t branch) {
    const Channel* state = contactChannel(survey, survey.branches()[branch], probe::kContact);
    const Channel* current = contactChannel(survey, survey.branches()[branch], probe::kContactCurrent);
    CarriedCurrent drive;
    if (state != nullptr && current != nullptr) {
        const Reading highest = highestMeanAfter(*current, risings(*state), kMaking_s, kMelting_s);
        drive = {highest.value, highest.at_s};
    }
    return larger(drive, expectedOf(survey, branch).together_A);
}

CarriedCurrent breakingCurrent(const Survey& survey, std::size_t branch) {
    const Channel* state = contactChannel(survey, survey.branches()[branch], probe::kContact);
    const Channel* current = contactChannel(survey, survey.branches()[branch], probe::kContactCurrent);
    CarriedCurrent drive;
    if (state != nullptr && current != nullptr) {
        drive = largestBefore(*current, fallings(*state));
    }
    return larger(drive, expectedOf(survey, branch).running_A);
}

Text whereFrom(const CarriedCurrent& current) {
    return current.at_s ? inDriveAt(*current.at_s) : say("by the nameplates of its loads");
}

} // namespace pumpwright
