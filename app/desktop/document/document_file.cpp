#include "app/desktop/document/document.h"
#include "core/files/circuit_file.h"

#include <QFile>

namespace pumpwright {
namespace {

std::filesystem::path filePath(const QString& path) {
    return std::filesystem::path(QFile::encodeName(path).toStdString());
}

} // namespace

Result<void> Document::open(const QString& path) {
    Result<Circuit> circuit = readCircuit(filePath(path));
    if (!circuit) {
        return tl::make_unexpected(circuit.error());
    }
    replaceAll(*circuit, path);
    return {};
}

Result<void> Document::save(const QString& path) {
    const Result<void> written = writeCircuit(m_circuit, filePath(path));
    if (!written) {
        return written;
    }
    const bool moved = path != m_path;
    m_path = path;
    const bool wasClean = m_undoStack.isClean();
    m_undoStack.setClean();
    if (moved && wasClean) {
        Q_EMIT fileChanged();
    }
    return {};
}

} // namespace pumpwright
