#include "app/desktop/document/snapshots.h"

#include "app/desktop/document/document.h"
#include "core/files/circuit_file.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QSaveFile>
#include <QUuid>

namespace pumpwright {
namespace {

// Counted from the first change since the last snapshot, not from the last change: drawing without a pause is
// kept too.
constexpr int kMostWorkLost_ms = 800;

const QString kCircuit = QStringLiteral(".pumpwright");
const QString kTried = QStringLiteral(".tried");
const QString kAside = QStringLiteral(".aside");
const QString kOrigin = QStringLiteral(".origin");
const QString kLock = QStringLiteral(".lock");

QString newBase(const QString& folder) {
    QDir().mkpath(folder);
    return QDir(folder).filePath(QUuid::createUuid().toString(QUuid::WithoutBraces));
}

void writeText(const QString& path, const QByteArray& text) {
    QSaveFile file(path);
    if (file.open(QIODevice::WriteOnly)) {
        file.write(text);
        file.commit();
    }
}

QString baseOf(const QString& file) {
    return file.left(file.lastIndexOf(QLatin1Char('.')));
}

bool isAbandoned(const QString& base) {
    QLockFile lock(base + kLock);
    lock.setStaleLockTime(0);
    return lock.tryLock(0);
}

} // namespace

Snapshots::Snapshots(Document& document, const QString& folder, QObject* parent)
    : QObject(parent), m_document(document), m_base(newBase(folder)), m_lock(m_base + kLock) {
    m_lock.setStaleLockTime(0);
    m_writer.setMaxThreadCount(1);
    m_due.setSingleShot(true);
    m_due.setInterval(kMostWorkLost_ms);
    connect(&m_due, &QTimer::timeout, this, &Snapshots::write);
    connect(&m_document, &Document::changed, this, &Snapshots::noteChange);
    connect(&m_document, &Document::fileChanged, this, [this] {
        if (m_document.isModified()) {
            noteChange();
        } else {
            forget();
        }
    });
}

Snapshots::~Snapshots() {
    forget();
    m_lock.unlock();
}

QString Snapshots::file() const {
    return m_base + kCircuit;
}

void Snapshots::noteChange() {
    if (!m_due.isActive()) {
        m_due.start();
    }
}

void Snapshots::write() {
    if (!m_document.isModified() || !(m_lock.isLocked() || m_lock.tryLock(0))) {
        return;
    }
    m_writer.start([circuit = m_document.circuit(), origin = m_document.path().toUtf8(), base = m_base] {
        writeText(base + kOrigin, origin);
        writeText(base + kCircuit, QByteArray::fromStdString(circuitText(circuit)));
    });
}

void Snapshots::forget() {
    m_due.stop();
    m_writer.waitForDone();
    QFile::remove(m_base + kCircuit);
    QFile::remove(m_base + kOrigin);
}

QList<LostWork> lostWork(const QString& folder) {
    QList<LostWork> found;
    const auto files = QDir(folder).entryInfoList({QLatin1Char('*') + kCircuit, QLatin1Char('*') + kTried},
                                                  QDir::Files, QDir::Time);
    for (const QFileInfo& info : files) {
        const QString base = baseOf(info.filePath());
        if (isAbandoned(base)) {
            QFile origin(base + kOrigin);
            const QByteArray path = origin.open(QIODevice::ReadOnly) ? origin.readAll() : QByteArray();
            found << LostWork{info.filePath(), QString::fromUtf8(path), info.lastModified()};
        }
    }
    return found;
}

Result<RecoveredWork> recover(const LostWork& work) {
    const QString base = baseOf(work.file);
    if (work.file.endsWith(kTried)) {
        QFile::rename(work.file, base + kAside);
        return tl::make_unexpected(
            Error{ErrorCode::FileUnreadable,
                  QCoreApplication::translate(
                      "Snapshots", "This unsaved work was opened before and the program did not live. It "
                                   "is set aside, and will not be offered again.")
                      .toStdString(),
                  {(base + kAside).toStdString(), 0, {}}});
    }
    QFile::rename(work.file, base + kTried);
    auto circuit = readCircuit(std::filesystem::path(QFile::encodeName(base + kTried).toStdString()));
    if (!circuit) {
        return tl::make_unexpected(circuit.error());
    }
    return RecoveredWork{std::move(*circuit), base + kTried};
}

void discard(const LostWork& work) {
    QFile::remove(work.file);
    QFile::remove(baseOf(work.file) + kOrigin);
}

} // namespace pumpwright
