#pragma once

#include <QLabel>
#include <QTimer>

namespace pumpwright {

/// Says for a few seconds, at the lower edge of a widget, what was done. It takes no click and no key, and
/// there is nothing to decide.
class Toast final : public QLabel {
    Q_OBJECT

public:
    explicit Toast(QWidget& over);

    void say(const QString& text);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void place();

    QTimer m_end;
};

} // namespace pumpwright
