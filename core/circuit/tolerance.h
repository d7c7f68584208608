#pragma once

namespace pumpwright {

/// How the values of many parts of one sort lie about what their plate says.
enum class ToleranceSort {
    Uniform, ///< anywhere within ±share, each value as likely
    Normal,  ///< bell-shaped; ±share are two standard deviations, 95 % of the parts [JCGM 100:2008, 4.3.4]
    Limits,  ///< at the lower or at the upper end: the worst that may be sold
};

/// How far a value may be off. `share` is of the value itself, 0…1, to both sides.
struct Tolerance {
    ToleranceSort sort = ToleranceSort::Uniform;
    double share = 0;
    friend bool operator==(const Tolerance&, const Tolerance&) = default;
};

} // namespace pumpwright
