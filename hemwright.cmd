@echo off
rem Runs Hemwright on Windows. Builds it first where the jar is missing.
rem After a change of the sources: delete cli\target and run again.
setlocal
set "ROOT=%~dp0"
set "JAR=%ROOT%cli\target\hemwright.jar"
set "JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"
if not exist "%JAR%" (
  echo hemwright: building, which takes a minute or two the first time ... 1>&2
  pushd "%ROOT%"
  call mvn -q -B -ntp -pl cli -am -Dmaven.test.skip=true package 1>&2 || (popd & exit /b 3)
  popd
)
"%JAVA%" -XX:+UseSerialGC -Djava.awt.headless=true -jar "%JAR%" %*
exit /b %ERRORLEVEL%
