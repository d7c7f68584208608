#pragma once

#include "app/console/outcome.h"
#include "app/console/request.h"
#include "core/study/study_run.h"

#include <csignal>
#include <cstddef>

namespace pumpwright {

/// Shows on a terminal how far a study is, and ends it early at an interrupt (Ctrl-C), so that what it had
/// come to can still be printed. One at a time.
class StudyWatch {
public:
    StudyWatch();
    ~StudyWatch();
    StudyWatch(const StudyWatch&) = delete;
    StudyWatch& operator=(const StudyWatch&) = delete;

    /// Lets the study report here and be cancelled.
    void watch(StudyOptions& options);
    /// What the command comes to: as it is, or, after an interrupt, what people can read of the part that was
    /// done, with a word about it.
    Outcome outcome(Outcome whole, OutputForm form) const;

private:
    void show(std::size_t done, std::size_t total);

    bool m_onTerminal;
    std::size_t m_done = 0;
    std::size_t m_total = 0;
    struct sigaction m_before {};
};

} // namespace pumpwright
