#include "app/desktop/sheet/written_file.h"

#include <QSaveFile>

namespace pumpwright {

Result<void> writeWholeFile(const QString& path, const QByteArray& bytes, const QString& what) {
    QSaveFile file(path);
    if (file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size() && file.commit()) {
        return {};
    }
    return unwritableFile(path, QStringLiteral("%1 can't be written: %2. Choose another folder or file name.")
                                    .arg(what, file.errorString()));
}

tl::unexpected<Error> unwritableFile(const QString& path, const QString& text) {
    return tl::unexpected(Error{ErrorCode::FileUnwritable, text.toStdString(), {path.toStdString(), 0, {}}});
}

} // namespace pumpwright
