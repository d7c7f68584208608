#include "app/console/study_watch.h"

#include <fmt/core.h>
#include <unistd.h>

#include <atomic>
#include <cstdio>

namespace pumpwright {
namespace {

std::atomic<bool> g_interrupted{false};
static_assert(std::atomic<bool>::is_always_lock_free, "a signal handler may set it");

void noteInterrupt(int) {
    g_interrupted = true;
}

} // namespace

StudyWatch::StudyWatch() : m_onTerminal(isatty(STDERR_FILENO) != 0) {
    g_interrupted = false;
    struct sigaction action {};
    action.sa_handler = noteInterrupt;
    action.sa_flags = static_cast<int>(SA_RESETHAND); // a second Ctrl-C ends the program at once
    sigaction(SIGINT, &action, &m_before);
}

StudyWatch::~StudyWatch() {
    sigaction(SIGINT, &m_before, nullptr);
    if (m_onTerminal && m_total > 0) {
        std::fputs("\r                              \r", stderr);
    }
}

void StudyWatch::watch(StudyOptions& options) {
    options.cancel = &g_interrupted;
    options.progress = [this](std::size_t done, std::size_t total) { show(done, total); };
}

Outcome StudyWatch::outcome(Outcome whole, OutputForm form) const {
    if (!g_interrupted) {
        return whole;
    }
    if (form != OutputForm::People) {
        whole.out.clear(); // half a table would pass for a whole one
    }
    whole.status = ExitStatus::Interrupted;
    whole.err += fmt::format("pumpwright: interrupted after {} of {} drives\n", m_done, m_total);
    return whole;
}

void StudyWatch::show(std::size_t done, std::size_t total) {
    m_done = done;
    m_total = total;
    if (m_onTerminal) {
        std::fputs(fmt::format("\r{} of {} drives", done, total).c_str(), stderr);
    }
}

} // namespace pumpwright
