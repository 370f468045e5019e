@echo off
rem Opens the pages. They stay open as long as this window does.
title ExamDocs
"%~dp0examdocs.exe" workbench %*
if errorlevel 1 pause
