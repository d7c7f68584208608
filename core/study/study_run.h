#pragma once

#include <atomic>
#include <chrono>
#include <condition_variable>
#include <cstddef>
#include <exception>
#include <functional>
#include <mutex>
#include <optional>
#include <thread>
#include <vector>

namespace pumpwright {

/// How a study of many drives runs.
struct StudyOptions {
    unsigned threads = 0;                      ///< 0: one for each core
    const std::atomic<bool>* cancel = nullptr; ///< looked at at least every 20 ms
    /// Called on the thread that started the study.
    std::function<void(std::size_t done, std::size_t total)> progress;
};

/// The threads that a study with these options uses.
unsigned threadsOf(const StudyOptions& options);

/// Runs jobs on several threads and hands their results over in order of their numbers, on the calling
/// thread. What comes out is the same on any number of threads; at most a few results wait at a time, however
/// many jobs there are.
template <class Outcome>
class OrderedRun {
public:
    /// Job number `index`; `stop` turns true when its result is not wanted any more.
    using Job = std::function<Outcome(std::size_t index, const std::atomic<bool>& stop)>;
    /// Takes over a result; false: no more are wanted.
    using Take = std::function<bool(std::size_t index, Outcome outcome)>;

    /// Runs jobs 0…count−1; returns how many results were taken.
    static std::size_t run(std::size_t count, const StudyOptions& options, Job job, Take take) {
        OrderedRun self(count, options, std::move(job));
        self.start(options);
        return self.takeAll(options, take);
    }

private:
    OrderedRun(std::size_t count, const StudyOptions& options, Job job)
        : m_count(count), m_job(std::move(job)) {
        constexpr std::size_t kWaitingPerThread = 4;
        m_slots.resize(kWaitingPerThread * threadsOf(options));
    }
    ~OrderedRun() {
        halt();
        for (std::thread& thread : m_threads) {
            thread.join();
        }
    }

    /// Not part of the construction: where a thread finds no memory, the destructor ends those before it.
    void start(const StudyOptions& options) {
        m_threads.reserve(threadsOf(options));
        for (unsigned i = 0; i < threadsOf(options) && i < m_count; ++i) {
            m_threads.emplace_back([this] { work(); });
        }
    }

    void halt() {
        m_stop = true;
        const std::lock_guard lock(m_mutex);
        m_wake.notify_all();
    }

    void work() {
        std::unique_lock lock(m_mutex);
        while (!m_stop && m_next < m_count) {
            if (m_next >= m_taken + m_slots.size()) {
                m_wake.wait(lock);
                continue;
            }
            const std::size_t index = m_next++;
            lock.unlock();
            std::optional<Outcome> outcome;
            std::exception_ptr failure;
            try {
                outcome = m_job(index, m_stop);
            } catch (const std::exception&) { // no memory: told to whoever started the study
                failure = std::current_exception();
            }
            lock.lock();
            m_failure = failure ? failure : m_failure;
            m_slots[index % m_slots.size()] = std::move(outcome);
            m_wake.notify_all();
        }
    }

    /// The next result in order; nothing where the study was cancelled, however many results wait.
    std::optional<Outcome> next(const StudyOptions& options) {
        constexpr std::chrono::milliseconds kLook{20};
        std::unique_lock lock(m_mutex);
        std::optional<Outcome>& slot = m_slots[m_taken % m_slots.size()];
        while (options.cancel == nullptr || !options.cancel->load(std::memory_order_relaxed)) {
            if (slot) {
                std::optional<Outcome> outcome = std::move(slot);
                slot.reset();
                ++m_taken;
                m_wake.notify_all();
                return outcome;
            }
            if (m_failure) {
                std::rethrow_exception(m_failure);
            }
            m_wake.wait_for(lock, kLook);
        }
        return std::nullopt;
    }

    std::size_t takeAll(const StudyOptions& options, const Take& take) {
        std::size_t taken = 0;
        while (taken < m_count) {
            std::optional<Outcome> outcome = next(options);
            if (!outcome) {
                break;
            }
            const bool more = take(taken++, std::move(*outcome));
            if (options.progress) {
                options.progress(taken, m_count);
            }
            if (!more) {
                break;
            }
        }
        halt();
        return taken;
    }

    std::size_t m_count;
    Job m_job;
    std::mutex m_mutex;
    std::condition_variable m_wake;
    std::vector<std::optional<Outcome>> m_slots;
    std::exception_ptr m_failure;
    std::size_t m_next = 0;
    std::size_t m_taken = 0;
    std::atomic<bool> m_stop = false;
    std::vector<std::thread> m_threads;
};

} // namespace pumpwright
