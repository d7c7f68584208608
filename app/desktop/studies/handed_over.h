#pragma once

#include <QMutex>

#include <utility>

namespace pumpwright {

/// What a study on another thread has come to, for the window to look at.
template <class Value>
class HandedOver {
public:
    void put(Value value) {
        const QMutexLocker lock(&m_mutex);
        m_value = std::move(value);
    }
    Value value() const {
        const QMutexLocker lock(&m_mutex);
        return m_value;
    }

private:
    mutable QMutex m_mutex;
    Value m_value;
};

} // namespace pumpwright
