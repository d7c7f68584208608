#pragma once

#include "core/checks/survey.h"

#include <vector>

namespace pumpwright {

/// An input that acts on a voltage, and how it is fed.
struct InputPath {
    const LoadPath* path;
    const ControlInput* input;
};

/// Every input that a supply feeds.
std::vector<InputPath> inputPaths(const Survey& survey);

} // namespace pumpwright
