#pragma once

#include "app/desktop/document/snapshots.h"

#include <QFrame>

class QLabel;

namespace pumpwright {

class Dialogs;
class FileActions;

/// Offers unsaved work that was left behind, one piece at a time, without standing in the way.
class LostWorkBar final : public QFrame {
    Q_OBJECT

public:
    LostWorkBar(Document& document, FileActions& files, Dialogs& dialogs, const QString& folder,
                QWidget* parent = nullptr);

private:
    void offerNext();
    void open();
    void throwAway();

    Document& m_document;
    FileActions& m_files;
    Dialogs& m_dialogs;
    QString m_folder;
    QList<LostWork> m_work;
    QLabel* m_text;
};

} // namespace pumpwright
