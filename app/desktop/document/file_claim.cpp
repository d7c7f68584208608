#include "app/desktop/document/file_claim.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFileInfo>

namespace pumpwright {
namespace {

/// The same for every way of writing the path.
QString claimName(const QString& path) {
    const QFileInfo file(path);
    const QString real = file.exists() ? file.canonicalFilePath() : file.absoluteFilePath();
    const QByteArray sum = QCryptographicHash::hash(real.toUtf8(), QCryptographicHash::Sha256);
    return QString::fromLatin1(sum.toHex().left(32)) + QStringLiteral(".lock");
}

} // namespace

bool FileClaim::claim(const QString& path) {
    if (m_lock && path == m_path) {
        return m_lock->isLocked();
    }
    m_lock.reset();
    m_path = path;
    if (path.isEmpty()) {
        return true;
    }
    QDir().mkpath(m_folder);
    m_lock = std::make_unique<QLockFile>(QDir(m_folder).filePath(claimName(path)));
    m_lock->setStaleLockTime(0); // a claim is as old as the work is long
    return m_lock->tryLock(0) || m_lock->error() != QLockFile::LockFailedError;
}

} // namespace pumpwright
