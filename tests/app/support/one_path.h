#pragma once

#include "app/desktop/dialogs.h"

namespace pumpwright {

/// Answers every question for a file with one path, and counts complaints.
struct OnePath final : Dialogs {
    QString path;
    int errors = 0;

    QString pathToOpen(const PathRequest&) override { return path; }
    QString pathToSave(const PathRequest&) override { return path; }
    UnsavedAnswer unsavedAnswer(const QString&) override { return UnsavedAnswer::Cancel; }
    void showError(const QString&, const Error&) override { ++errors; }
};

} // namespace pumpwright
