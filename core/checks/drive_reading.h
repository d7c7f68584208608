#pragma once

#include "core/simulate/recording.h"

#include <vector>

namespace pumpwright {

/// A value read from a recording, and when it showed.
struct Reading {
    double value = 0;
    double at_s = 0;
};

struct TimeSpan {
    double from_s = 0;
    double to_s = 0;
    double length_s() const { return to_s - from_s; }
};

/// Conductors, fuses and contacts warm up over seconds; what they carry for that long counts as sustained.
/// Common practice, no published source.
inline constexpr double kSustained_s = 5;

/// The highest time average of the magnitude over any window of the recording; over all of it where it is
/// shorter than the window. `at_s` is where the window begins.
Reading highestMean(const Channel& channel, double window_s = kSustained_s);

/// The same, over windows that begin within `span_s` after one of the times. `at_s` is that time.
Reading highestMeanAfter(const Channel& channel, const std::vector<double>& times_s, double span_s,
                         double window_s);

/// The largest magnitude from `from_s` to `to_s`.
double largestMagnitude(const Channel& channel, double from_s, double to_s);

/// Times at which a stepped channel goes from 0 to 1, and from 1 to 0.
std::vector<double> risings(const Channel& channel);
std::vector<double> fallings(const Channel& channel);

/// Spans in which the magnitude is at or above the threshold; gaps shorter than `bridged_s` do not end one.
std::vector<TimeSpan> spansAbove(const Channel& channel, double threshold, double bridged_s = 0);

} // namespace pumpwright
