#pragma once

#include <mutex>
#include <utility>

namespace pumpwright {

/// What a study on another thread has come to, for the window to look at.
template <class Value>
class HandedOver {
public:
    void put(Value value) {
        const std::lock_guard lock(m_mutex);
        m_value = std::move(value);
    }
    Value value() const {
        const std::lock_guard lock(m_mutex);
        return m_value;
    }

private:
    mutable std::mutex m_mutex;
    Value m_value;
};

} // namespace pumpwright
