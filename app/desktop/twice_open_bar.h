#pragma once

#include "app/desktop/document/file_claim.h"

#include <QFrame>

class QLabel;

namespace pumpwright {

class Document;

/// Warns, from when a file is opened, that another window works on it too.
class TwiceOpenBar final : public QFrame {
    Q_OBJECT

public:
    TwiceOpenBar(Document& document, const QString& claimsFolder, QWidget* parent = nullptr);

private:
    void look();

    Document& m_document;
    FileClaim m_claim;
    QString m_path;
    QLabel* m_text;
};

} // namespace pumpwright
