#pragma once

namespace pumpwright {

/// A function's value and its derivative at one point.
struct SmoothValue {
    double value;
    double slope;
};

/// max(0, x) with a rounded corner of about ±3·`width` around zero. Finite for every x; never negative.
SmoothValue smoothRamp(double x, double width);

/// 0 for x well below zero, 1 well above, ½ at zero; rises over about ±3·`width`.
SmoothValue smoothStep(double x, double width);

/// 0 for x below zero, then rising towards 1: ½ at `knee`, 0.99 at three times that. Something that takes a
/// nearly constant current as soon as it has some voltage, and none backwards. It starts with the fourth
/// power: a steeper start would change its slope a thousandfold within what a node voltage is uncertain by.
SmoothValue smoothOnset(double x, double knee);

/// x limited to ±`limit`, with slope 1 at zero.
SmoothValue smoothLimit(double x, double limit);

} // namespace pumpwright
