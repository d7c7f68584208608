#include "app/desktop/running_program.h"

#include <QCryptographicHash>
#include <QDir>
#include <QLocalSocket>
#include <QStandardPaths>

namespace pumpwright {
namespace {

constexpr int kPatience_ms = 1500;
constexpr qint64 kLongestPath = 64 * 1024;
constexpr char kEnd = 0; ///< no file name holds it
const QByteArray kTaken = QByteArrayLiteral("taken\n");

} // namespace

QString RunningProgram::socketPath() {
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::RuntimeLocation);
    if (folder.isEmpty()) {
        return {};
    }
    const QByteArray display = qgetenv("WAYLAND_DISPLAY") + '/' + qgetenv("DISPLAY");
    const QByteArray sum = QCryptographicHash::hash(display, QCryptographicHash::Sha256).toHex().left(12);
    return QDir(folder).filePath(QStringLiteral("pumpwright-%1").arg(QString::fromLatin1(sum)));
}

bool RunningProgram::handOver(const QString& socket, const QString& file) {
    if (socket.isEmpty() || file.contains(QChar(u'\0'))) {
        return false;
    }
    QLocalSocket connection;
    connection.connectToServer(socket);
    if (!connection.waitForConnected(kPatience_ms)) {
        return false;
    }
    connection.write(file.toUtf8() + kEnd);
    return connection.waitForBytesWritten(kPatience_ms) && connection.waitForReadyRead(kPatience_ms) &&
           connection.readAll() == kTaken;
}

bool RunningProgram::listen(const QString& socket) {
    if (socket.isEmpty()) {
        return false;
    }
    m_server.setSocketOptions(QLocalServer::UserAccessOption);
    connect(&m_server, &QLocalServer::newConnection, this, &RunningProgram::welcome, Qt::UniqueConnection);
    if (!m_server.listen(socket) && m_server.serverError() == QAbstractSocket::AddressInUseError) {
        QLocalServer::removeServer(socket); // nobody answered there, else this start would have ended
        return m_server.listen(socket);
    }
    return m_server.isListening();
}

void RunningProgram::welcome() {
    while (QLocalSocket* connection = m_server.nextPendingConnection()) {
        connect(connection, &QLocalSocket::disconnected, connection, &QObject::deleteLater);
        connect(connection, &QLocalSocket::readyRead, this, [this, connection] {
            if (connection->bytesAvailable() > kLongestPath) {
                connection->abort();
                return;
            }
            const QByteArray said = connection->peek(kLongestPath);
            if (said.endsWith(kEnd)) {
                connection->readAll();
                connection->write(kTaken);
                connection->flush();
                connection->disconnectFromServer();
                Q_EMIT asked(QString::fromUtf8(said.chopped(1)));
            }
        });
    }
}

} // namespace pumpwright
