#pragma once

#include <QFrame>

namespace pumpwright {

/// The usual cautions above the canvas: they stop nobody from working, and stay until they are understood.
class CautionsBar final : public QFrame {
    Q_OBJECT

public:
    explicit CautionsBar(QWidget* parent = nullptr);

Q_SIGNALS:
    void understood();
};

} // namespace pumpwright
