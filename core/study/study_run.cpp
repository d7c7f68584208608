#include "core/study/study_run.h"

#include <algorithm>

namespace pumpwright {

unsigned threadsOf(const StudyOptions& options) {
    return options.threads > 0 ? options.threads : std::max(1U, std::thread::hardware_concurrency());
}

} // namespace pumpwright
