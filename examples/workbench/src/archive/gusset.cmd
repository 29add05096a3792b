@echo off
rem Runs the workbench with the Java that lies beside it, or else with that of the machine.
setlocal
set "home=%~dp0"
set "java=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
if exist "%home%java\bin\java.exe" set "java=%home%java\bin\java.exe"
"%java%" -XX:+UseSerialGC -cp "%home%lib\*" org.gusset.workbench.Workbench %*
exit /b %errorlevel%
