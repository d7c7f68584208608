#pragma once

#include <QLockFile>
#include <QString>

#include <memory>

namespace pumpwright {

/// Says which circuit file a window works on, so that a second window that opens it knows. A claim of a
/// program that has ended without giving it up does not count. Claims hold among the windows of one user on
/// one machine.
class FileClaim {
public:
    /// Claims are kept in the given folder.
    explicit FileClaim(QString folder) : m_folder(std::move(folder)) {}

    /// Gives up what was claimed and claims this file instead; no file for an empty path. False where another
    /// window has it.
    bool claim(const QString& path);

private:
    QString m_folder;
    QString m_path;
    std::unique_ptr<QLockFile> m_lock;
};

} // namespace pumpwright
