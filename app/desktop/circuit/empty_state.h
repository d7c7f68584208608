#pragma once

#include <QWidget>

namespace pumpwright {

/// What an empty canvas offers to begin with.
class EmptyState final : public QWidget {
    Q_OBJECT

public:
    explicit EmptyState(QWidget* parent);

Q_SIGNALS:
    void sampleRequested();
    void fileRequested();
};

} // namespace pumpwright
