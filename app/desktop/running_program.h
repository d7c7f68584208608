#pragma once

#include <QLocalServer>
#include <QObject>
#include <QString>

namespace pumpwright {

/// Lets a second start of the program hand its file to the one that runs, so that all windows are of one
/// program. Among the windows of one user on one display.
class RunningProgram final : public QObject {
    Q_OBJECT

public:
    /// The user's socket for the display at hand; empty where there is no folder for such things.
    static QString socketPath();

    /// Asks the program that listens there to open a file, or an empty window for an empty path. False where
    /// none listens or it does not answer.
    static bool handOver(const QString& socket, const QString& file);

    using QObject::QObject;

    /// Listens from now on; a socket that a killed program left behind is taken over. False where that can't
    /// be done: then each start is a program of its own.
    bool listen(const QString& socket);

Q_SIGNALS:
    void asked(const QString& file);

private:
    void welcome();

    QLocalServer m_server;
};

} // namespace pumpwright
