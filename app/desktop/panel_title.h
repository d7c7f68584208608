#pragma once

#include <QDockWidget>
#include <QWidget>

namespace pumpwright {

/// The title of a panel, with a question mark that opens its help and a cross that closes it. A drag moves
/// the panel and a double click takes it out of the window, as with any dock's title.
class PanelTitle final : public QWidget {
    Q_OBJECT

public:
    explicit PanelTitle(QDockWidget& panel);

Q_SIGNALS:
    void helpRequested();
};

} // namespace pumpwright
