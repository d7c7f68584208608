#pragma once

#include "core/units/result.h"

#include <QFrame>

class QLabel;

namespace pumpwright {

/// Says what failed, why and what to do, above the work and not in its way, until it is put away or the next
/// failure takes its place.
class ErrorBar final : public QFrame {
    Q_OBJECT

public:
    explicit ErrorBar(QWidget* parent = nullptr);

    void say(const QString& what, const Error& error);
    QString text() const;

private:
    QLabel* m_what;
    QLabel* m_why;
};

} // namespace pumpwright
