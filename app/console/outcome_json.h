#pragma once

#include "core/files/json_text.h"
#include "core/study/drive_outcome.h"

#include <string>
#include <vector>

namespace pumpwright {

/// Adds what a drive comes to: status, numbers, open findings by signal word.
void addOutcome(Json& json, const DriveOutcome& outcome);

/// A head line of keys and a line of values for each object, as its JSON has them: `a/b` for a key inside
/// another. What starts with `/` and the name `leftOut` is left out.
std::string flatCsv(const std::vector<Json>& objects, const std::string& leftOut = {});

} // namespace pumpwright
